#!/bin/sh
# Double click on macOS: a window asks for the workbook, which is dragged into it.
exec "${0%/*}/bin/on-a-workbook" send "$@"

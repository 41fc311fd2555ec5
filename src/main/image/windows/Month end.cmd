@echo off
rem Drop a workbook on this file, or double click it and drag the workbook into its window.
"%~dp0bin\on-a-workbook.cmd" month-end %*

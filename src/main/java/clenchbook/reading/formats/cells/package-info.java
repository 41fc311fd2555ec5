/**
 * Sheets, rows and cells as a file holds them, whatever its format. Start at {@link
 * clenchbook.reading.formats.cells.TableSource}.
 */
@NullMarked
package clenchbook.reading.formats.cells;

import org.jspecify.annotations.NullMarked;

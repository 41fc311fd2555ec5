/**
 * One cell at a time: dates, minutes, money, numbers, sizes, parts, each a value or a problem at
 * its cell. Start at {@link clenchbook.reading.cells.RowCells}.
 */
@NullMarked
package clenchbook.reading.cells;

import org.jspecify.annotations.NullMarked;

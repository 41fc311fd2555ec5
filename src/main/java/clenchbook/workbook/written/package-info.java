/**
 * The two workbooks that the program writes: the starter and the marked copy. Both are written as a
 * stream, with the same bytes for the same content; the farrier's own workbook is only read.
 */
@org.jspecify.annotations.NullMarked
package clenchbook.workbook.written;

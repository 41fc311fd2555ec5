/**
 * Every accepted file as one neutral table: sheets by name, rows streamed one at a time, cells of
 * few kinds.
 *
 * <p>Nothing here knows what a farrier keeps in a book. Start at {@link
 * clenchbook.workbook.table.TableSource}; {@link clenchbook.workbook.table.TableFile} opens one.
 * Files are opened for reading only; no link in them is followed, no macro run, and document types
 * and entities are refused.
 */
@org.jspecify.annotations.NullMarked
package clenchbook.workbook.table;

package clenchbook.book;

/**
 * How the rows of one sheet ended; used = rows - held - ignored is derived once all rules have run.
 *
 * @param sheet the sheet's own name
 * @param rows non-blank rows below the heading
 * @param ignored rows that are no data, such as a totals row
 */
public record SheetControl(String sheet, int rows, int ignored) {}

package clenchbook.book.understood;

import java.util.List;
import java.util.Optional;

/**
 * What was understood of a book.
 *
 * @param columns every column of every sheet: those not read first, then sheets not read, then the
 *     rest; within each in the order of the book
 * @param hidden hidden sheets that were read, by name
 * @param headingsFile the name of the file that served as the sheet Headings; empty for none
 */
public record Understood(
    List<UnderstoodColumn> columns, List<String> hidden, Optional<String> headingsFile) {
  /** Nothing at all, for a book that came from no workbook. */
  public static final Understood NOTHING = new Understood(List.of(), List.of(), Optional.empty());

  /** Copies its lists. */
  public Understood {
    columns = List.copyOf(columns);
    hidden = List.copyOf(hidden);
  }
}

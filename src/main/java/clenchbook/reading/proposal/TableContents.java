package clenchbook.reading.proposal;

import clenchbook.book.SheetKind;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A table of a book: its headings and first rows.
 *
 * @param sheet the sheet's own name
 * @param kind what the program takes it for; empty for a sheet that is not read
 * @param settled whether its name or the farrier says so; else its headings alone do
 * @param given the headings that no column gives: the sheet's own name does
 * @param columns its columns that have a heading, from left to right
 */
public record TableContents(
    String sheet,
    Optional<SheetKind> kind,
    boolean settled,
    Set<String> given,
    List<Column> columns) {
  /** Copies its lists. */
  public TableContents {
    given = Set.copyOf(given);
    columns = List.copyOf(columns);
  }
}

package clenchbook.reading.formats.cells;

/** Takes the rows of a sheet, one at a time, from the top. */
@FunctionalInterface
public interface RowSink {
  /**
   * Takes one row.
   *
   * @return false when no further row is wanted
   */
  boolean take(Row row);
}

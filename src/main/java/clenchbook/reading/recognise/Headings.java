package clenchbook.reading.recognise;

import clenchbook.reading.formats.cells.Cell;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What one row means as the heading row of one kind of sheet.
 *
 * @param cells every cell that holds something, from left to right
 * @param twice later columns of a meaning that a column further left has already
 * @param carried the headings whose blank cells take the value above them
 * @param named the heading to which the sheet's own name is given; empty for none
 */
public record Headings(
    List<HeadingCell> cells, List<Twice> twice, Set<String> carried, Optional<String> named) {
  /** Copies its lists. */
  public Headings {
    cells = List.copyOf(cells);
    twice = List.copyOf(twice);
    carried = Set.copyOf(carried);
  }

  /** Two columns of one meaning. */
  public record Twice(Cell later, Cell left, String heading) {}

  /** The column of each heading, in sheet order. */
  public Map<String, Integer> columns() {
    Map<String, Integer> columns = new LinkedHashMap<>();
    for (HeadingCell cell : cells) {
      if (!cell.heading().isEmpty()) {
        columns.put(cell.heading(), cell.cell().column());
      }
    }
    return columns;
  }

  /** The headings that there are, the one that the sheet's name gives included. */
  Set<String> found() {
    Set<String> found = new java.util.HashSet<>(columns().keySet());
    named.ifPresent(found::add);
    return found;
  }
}

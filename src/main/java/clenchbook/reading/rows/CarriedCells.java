package clenchbook.reading.rows;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.recognise.SheetLayout;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Cells that speak for the blank ones below them, as the day written once over its horses; never
 * across a blank row. The sheet's own name speaks for every row where the farrier says so.
 */
final class CarriedCells {
  private final Set<String> headings;
  private final Optional<String> named;
  private final Cell sheetName;
  private final Map<String, Cell> above = new HashMap<>();
  private int last;

  CarriedCells(SheetLayout layout) {
    headings = layout.headings().carried();
    named = layout.headings().named();
    sheetName = new Cell.Text(-1, false, layout.name(), false);
  }

  /** Notes a row that holds something, before it is told what it is. */
  void pass(int row) {
    if (row > last + 1) {
      above.clear();
    }
    last = row;
  }

  /** Whether a row has nothing but what is carried down from it. */
  boolean isHeadOfGroup(Map<String, Cell> known) {
    if (headings.isEmpty() || known.isEmpty() || !headings.containsAll(known.keySet())) {
      return false;
    }
    above.putAll(known);
    return true;
  }

  /** Fills in what the row leaves blank, and keeps what it has. */
  void fill(Map<String, Cell> known) {
    for (String heading : headings) {
      Cell own = known.get(heading);
      if (own != null) {
        above.put(heading, own);
      } else if (above.containsKey(heading)) {
        known.put(heading, above.get(heading));
      }
    }
    named.ifPresent(heading -> known.putIfAbsent(heading, sheetName));
  }
}

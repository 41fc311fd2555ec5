package clenchbook.reading.proposal;

import clenchbook.reading.formats.cells.Cell;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A column of a table with the cells of its first rows.
 *
 * @param at its place in the sheet, 0 for A
 * @param heading what stands over it; never empty
 * @param meaning what the program takes it for; empty where it does not know
 * @param settled whether nothing is to be guessed: the farrier has said something of it, or a
 *     column further left has its meaning
 * @param cells its cells by their rows
 */
public record Column(
    int at, String heading, String meaning, boolean settled, SortedMap<Integer, Cell> cells) {
  /** Copies the cells. */
  public Column {
    cells = new TreeMap<>(cells);
  }

  /** Whether a meaning is looked for. */
  boolean isOpen() {
    return meaning.isEmpty() && !settled;
  }

  Column meaning(String found) {
    return new Column(at, heading, found, settled, cells);
  }
}

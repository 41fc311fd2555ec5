package clenchbook.reading.recognise;

import clenchbook.book.SheetKind;
import clenchbook.problem.CellRef;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table of a sheet: what it is and which of its columns mean what. Most sheets have one.
 *
 * @param kind what its rows are
 * @param name the sheet's own name
 * @param index its position in the workbook, from 0
 * @param headingRow the row of its headings, from 1
 * @param block the columns it takes up
 * @param headings what the cells of its heading row mean
 * @param columns the column of each of the program's headings, from 0, in sheet order
 * @param letters the same columns by their letters
 * @param month of days that are numbers alone, where the sheet's name or a title gives it
 */
public record SheetLayout(
    SheetKind kind,
    String name,
    int index,
    int headingRow,
    Block block,
    Headings headings,
    Map<String, Integer> columns,
    Map<String, String> letters,
    MonthOfSheet month) {

  static SheetLayout of(
      SheetKind kind, SheetHead head, int headingRow, Block block, Headings headings) {
    Map<String, Integer> columns = headings.columns();
    Map<String, String> letters = new LinkedHashMap<>();
    columns.forEach((heading, column) -> letters.put(heading, CellRef.letters(column)));
    return new SheetLayout(
        kind,
        head.name(),
        head.index(),
        headingRow,
        block,
        headings,
        columns,
        Map.copyOf(letters),
        new MonthOfSheet(head.name(), List.of()));
  }

  SheetLayout in(Block narrower) {
    return new SheetLayout(
        kind, name, index, headingRow, narrower, headings, columns, letters, month);
  }

  /** The same table with the month that its bare days belong to. */
  SheetLayout within(MonthOfSheet given) {
    return new SheetLayout(kind, name, index, headingRow, block, headings, columns, letters, given);
  }

  /** The headings that there are, in the order of their columns. */
  public List<String> headingNames() {
    return List.copyOf(columns.keySet());
  }

  /** For each column of the sheet the place of its heading, or -1. */
  public int[] slots() {
    int widest = columns.values().stream().mapToInt(Integer::intValue).max().orElse(-1);
    int[] slots = new int[widest + 1];
    Arrays.fill(slots, -1);
    int slot = 0;
    for (int column : columns.values()) {
      slots[column] = slot++;
    }
    return slots;
  }

  /** A cell of the heading row. */
  CellRef heading(int column) {
    return new CellRef(name, headingRow, CellRef.letters(column));
  }
}

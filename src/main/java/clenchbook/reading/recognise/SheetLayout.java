package clenchbook.reading.recognise;

import clenchbook.book.SheetKind;
import clenchbook.problem.CellRef;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one sheet is and which of its columns mean what.
 *
 * @param kind what its rows are
 * @param name the sheet's own name
 * @param index its position in the workbook, from 0
 * @param headingRow the row of its headings, from 1
 * @param columns the column of each of the program's headings, from 0, in sheet order
 * @param letters the same columns by their letters
 */
public record SheetLayout(
    SheetKind kind,
    String name,
    int index,
    int headingRow,
    Map<String, Integer> columns,
    Map<String, String> letters) {

  static SheetLayout of(
      SheetKind kind, String name, int index, int headingRow, Map<String, Integer> columns) {
    Map<String, String> letters = new LinkedHashMap<>();
    columns.forEach((heading, column) -> letters.put(heading, CellRef.letters(column)));
    return new SheetLayout(
        kind, name, index, headingRow, new LinkedHashMap<>(columns), Map.copyOf(letters));
  }

  Optional<Integer> column(String heading) {
    return Optional.ofNullable(columns.get(heading));
  }

  /** The headings that there are, in the order of their columns. */
  public List<String> headings() {
    return List.copyOf(columns.keySet());
  }

  /** For each column of the sheet the place of its heading in {@link #headings()}, or -1. */
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

  CellRef at(int row, String heading) {
    return new CellRef(name, row, letters.getOrDefault(heading, ""));
  }
}

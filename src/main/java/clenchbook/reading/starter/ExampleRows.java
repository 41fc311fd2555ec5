package clenchbook.reading.starter;

import clenchbook.reading.formats.cells.Cell;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The example rows of the starters, in every language, under the canonical headings: a row that is
 * still as it was written counts for nothing.
 */
public final class ExampleRows {
  /** A cell of an example, by what its column holds. */
  private record Example(String kind, String text) {
    boolean is(Cell cell) {
      return switch (kind) {
        case "date" -> isDay(cell);
        case "number", "money" -> isNumber(cell);
        default -> cell.shown().strip().equals(text);
      };
    }

    private boolean isDay(Cell cell) {
      return cell instanceof Cell.Moment moment
          ? moment.at().toLocalDate().toString().equals(text)
          : cell.shown().strip().equals(text);
    }

    private boolean isNumber(Cell cell) {
      try {
        String plain = cell.shown().strip().replace(',', '.');
        return new BigDecimal(plain).compareTo(new BigDecimal(text)) == 0;
      } catch (NumberFormatException noNumber) {
        return false;
      }
    }
  }

  private final Map<String, List<Map<String, Example>>> bySheet = new HashMap<>();

  private ExampleRows() {}

  /** Those of all starters. */
  public static ExampleRows load() {
    ExampleRows rows = new ExampleRows();
    StarterPlan.all().forEach(plan -> plan.sheets().forEach(rows::add));
    return rows;
  }

  private void add(StarterPlan.Sheet sheet) {
    List<Map<String, Example>> rows =
        bySheet.computeIfAbsent(sheet.title(), title -> new ArrayList<>());
    for (List<String> cells : sheet.examples()) {
      Map<String, Example> row = new HashMap<>();
      for (int i = 0; i < cells.size(); i++) {
        StarterPlan.Column column = sheet.columns().get(i);
        if (!cells.get(i).isEmpty()) {
          row.put(column.heading(), new Example(column.kind(), cells.get(i)));
        }
      }
      rows.add(row);
    }
  }

  /**
   * Whether a row is one of the examples, cell for cell.
   *
   * @param sheet the canonical name of its sheet
   * @param cells those that hold something, by their canonical headings
   */
  public boolean holds(String sheet, Map<String, Cell> cells) {
    for (Map<String, Example> example : bySheet.getOrDefault(sheet, List.of())) {
      if (example.size() == cells.size() && isSame(example, cells)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isSame(Map<String, Example> example, Map<String, Cell> cells) {
    for (Map.Entry<String, Example> wanted : example.entrySet()) {
      Cell cell = cells.get(wanted.getKey());
      if (cell == null || !wanted.getValue().is(cell)) {
        return false;
      }
    }
    return true;
  }
}

package clenchbook.reading.starter;

import clenchbook.reading.formats.cells.Cell;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The example rows of the starters, in every language, under the canonical headings: a row that is
 * still as it was written counts for nothing.
 */
public final class ExampleRows {
  private static final class Languages {
    static final List<StarterTexts> TEXTS =
        StarterPlan.LANGUAGES.stream().map(StarterTexts::load).toList();
  }

  /** A row of the list, its cells that hold something by their headings. */
  private record Example(String sheet, Map<String, Held> cells) {}

  private record Held(StarterList.Column column, String english) {
    /** Numbers, days and addresses are the same in every language. */
    boolean isFixed() {
      return !column.kind().equals("text") || english.indexOf('@') >= 0;
    }
  }

  private final Map<String, List<Example>> bySheet = new HashMap<>();

  private ExampleRows() {}

  /** Those of all starters. */
  public static ExampleRows load() {
    ExampleRows rows = new ExampleRows();
    StarterList.sheets().forEach(rows::add);
    return rows;
  }

  private void add(StarterList.Sheet sheet) {
    List<Example> examples = new ArrayList<>();
    for (List<String> row : sheet.examples()) {
      Map<String, Held> cells = new HashMap<>();
      for (int i = 0; i < row.size(); i++) {
        StarterList.Column column = sheet.columns().get(i);
        if (!row.get(i).isEmpty()) {
          cells.put(column.heading(), new Held(column, row.get(i)));
        }
      }
      examples.add(new Example(sheet.title(), cells));
    }
    bySheet.put(sheet.title(), examples);
  }

  /**
   * Whether a row is one of the examples, cell for cell. The words of the languages are looked at
   * only where everything else is the same.
   *
   * @param sheet the canonical name of its sheet
   * @param cells those that hold something, by their canonical headings
   */
  public boolean holds(String sheet, Map<String, Cell> cells) {
    for (Example example : bySheet.getOrDefault(sheet, List.of())) {
      boolean same =
          example.cells().size() == cells.size()
              && isSame(example, cells, true, Optional.empty())
              && Languages.TEXTS.stream()
                  .anyMatch(texts -> isSame(example, cells, false, Optional.of(texts)));
      if (same) {
        return true;
      }
    }
    return false;
  }

  private static boolean isSame(
      Example example, Map<String, Cell> cells, boolean fixed, Optional<StarterTexts> texts) {
    for (Map.Entry<String, Held> entry : example.cells().entrySet()) {
      Held held = entry.getValue();
      Cell cell = cells.get(entry.getKey());
      if (cell == null) {
        return false;
      }
      if (held.isFixed() == fixed) {
        String wanted =
            texts
                .map(own -> own.example(example.sheet(), held.column(), held.english()))
                .orElse(held.english());
        if (!is(held.column().kind(), wanted, cell)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean is(String kind, String wanted, Cell cell) {
    return switch (kind) {
      case "date" ->
          cell instanceof Cell.Moment moment
              ? moment.at().toLocalDate().toString().equals(wanted)
              : cell.shown().strip().equals(wanted);
      case "number", "money" -> isNumber(wanted, cell);
      default -> cell.shown().strip().equals(wanted);
    };
  }

  private static boolean isNumber(String wanted, Cell cell) {
    try {
      String plain = cell.shown().strip().replace(',', '.');
      return new BigDecimal(plain).compareTo(new BigDecimal(wanted)) == 0;
    } catch (NumberFormatException noNumber) {
      return false;
    }
  }
}

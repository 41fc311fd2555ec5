package clenchbook.reading.starter;

import java.util.ArrayList;
import java.util.List;

/** The list that the starters of all languages share, as it stands: sheets, columns, examples. */
final class StarterList {
  private static final String SETTINGS = "Settings";

  private StarterList() {}

  /**
   * A sheet of the list, in English.
   *
   * @param columns its columns; for Settings none
   * @param examples its example rows, cells in the order of the columns
   * @param settings for Settings: name, list offered, purpose
   */
  record Sheet(
      String title,
      String purpose,
      List<Column> columns,
      List<List<String>> examples,
      List<List<String>> settings) {}

  /** A column of the list, in English. */
  record Column(
      String heading, boolean folded, int width, String kind, String offered, String purpose) {}

  static List<Sheet> sheets() {
    List<Sheet> sheets = new ArrayList<>();
    for (String line : StarterTexts.resource("starter.txt").lines().toList()) {
      if (line.startsWith("[")) {
        int end = line.indexOf(']');
        sheets.add(sheet(line.substring(1, end), line.substring(end + 1).strip()));
      } else if (!line.isBlank() && !line.startsWith("#")) {
        add(sheets.get(sheets.size() - 1), line);
      }
    }
    return sheets;
  }

  private static Sheet sheet(String title, String purpose) {
    List<List<String>> examples = new ArrayList<>();
    if (!title.equals(SETTINGS)) {
      examples.add(new ArrayList<>());
    }
    return new Sheet(title, purpose, new ArrayList<>(), examples, new ArrayList<>());
  }

  /** The first example stands with the columns, a cell with each. */
  private static void add(Sheet sheet, String line) {
    if (line.startsWith("+")) {
      sheet.examples().add(parts(line.substring(1)));
      return;
    }
    List<String> parts = parts(line);
    if (sheet.title().equals(SETTINGS)) {
      sheet.settings().add(parts);
      return;
    }
    boolean folded = parts.get(0).startsWith("~");
    sheet
        .columns()
        .add(
            new Column(
                folded ? parts.get(0).substring(1) : parts.get(0),
                folded,
                Integer.parseInt(parts.get(1)),
                parts.get(2),
                parts.get(3),
                parts.get(5)));
    sheet.examples().get(0).add(parts.get(4));
  }

  private static List<String> parts(String line) {
    List<String> parts = new ArrayList<>();
    int from = 0;
    for (int bar = line.indexOf('|'); bar >= 0; bar = line.indexOf('|', from)) {
      parts.add(line.substring(from, bar).strip());
      from = bar + 1;
    }
    parts.add(line.substring(from).strip());
    return parts;
  }
}

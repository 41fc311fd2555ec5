package clenchbook.writing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** What stands in the starter workbook, from the list that the program carries. */
final class StarterPlan {
  private static final String LIST = "starter.txt";

  private StarterPlan() {}

  /**
   * A sheet of the starter.
   *
   * @param name its name
   * @param purpose what it is for
   * @param columns its columns; none for Settings
   * @param more example rows beside the one of the columns
   * @param settings the settings of Settings
   */
  record Sheet(
      String name,
      String purpose,
      List<Column> columns,
      List<List<String>> more,
      List<SettingLine> settings) {}

  /**
   * A column.
   *
   * @param heading its heading
   * @param folded whether it is folded away at first
   * @param width in characters
   * @param kind text, size, date, money or number
   * @param offered a list of cells ({@code =Owners!...}) or of words in quotes; empty for none
   * @param example what stands in the example row; may be empty
   * @param purpose what it is for
   */
  record Column(
      String heading,
      boolean folded,
      int width,
      String kind,
      String offered,
      String example,
      String purpose) {}

  /**
   * A line of Settings.
   *
   * @param name the setting
   * @param offered a list of words in quotes; empty for none
   * @param purpose what it is for, and what a blank means
   */
  record SettingLine(String name, String offered, String purpose) {}

  /** Reads the list. */
  static List<Sheet> load() {
    try (InputStream stream = StarterPlan.class.getResourceAsStream(LIST)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its starter: " + LIST);
      }
      return parse(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static List<Sheet> parse(String list) {
    List<Sheet> sheets = new ArrayList<>();
    for (String line : list.lines().toList()) {
      if (line.startsWith("[")) {
        int end = line.indexOf(']');
        sheets.add(
            new Sheet(
                line.substring(1, end),
                line.substring(end + 1).strip(),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>()));
      } else if (!line.isBlank() && !line.startsWith("#")) {
        add(sheets.get(sheets.size() - 1), line);
      }
    }
    return sheets;
  }

  private static void add(Sheet sheet, String line) {
    if (line.startsWith("+")) {
      sheet.more().add(parts(line.substring(1)));
    } else if (sheet.name().equals("Settings")) {
      List<String> parts = parts(line);
      sheet.settings().add(new SettingLine(parts.get(0), parts.get(1), parts.get(2)));
    } else {
      sheet.columns().add(column(parts(line)));
    }
  }

  private static List<String> parts(String line) {
    List<String> parts = new ArrayList<>();
    for (String part : line.split("\\|", -1)) {
      parts.add(part.strip());
    }
    return parts;
  }

  private static Column column(List<String> parts) {
    String heading = parts.get(0);
    boolean folded = heading.startsWith("~");
    return new Column(
        folded ? heading.substring(1) : heading,
        folded,
        Integer.parseInt(parts.get(1)),
        parts.get(2),
        parts.get(3),
        parts.get(4),
        parts.get(5));
  }
}

package clenchbook.samples;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One sheet of a sample workbook while it is being made: headings and rows of plain values. */
final class Tab {
  /** A cell that holds a formula together with the value the spreadsheet stored for it. */
  record Formula(String text, double stored) {}

  /** A cell that holds a spreadsheet error. */
  record Broken(String error) {}

  /** A clock-formatted duration. */
  record Clock(int minutes) {}

  final String name;
  final List<String> headings;
  final List<Map<String, Object>> rows = new ArrayList<>();
  String title = "";
  String totals = "";

  Tab(String name, String headings) {
    this.name = name;
    this.headings = new ArrayList<>(List.of(headings.split(" *\\| *")));
  }

  /** Adds a row; blank and null values are left out. Values follow the headings in order. */
  Map<String, Object> add(Object... values) {
    Map<String, Object> row = new LinkedHashMap<>();
    for (int i = 0; i < values.length; i++) {
      put(row, headings.get(i), values[i]);
    }
    rows.add(row);
    return row;
  }

  /**
   * Adds rows from bar-parted lines; a line that starts with # names the headings from there on.
   */
  void lines(String text) {
    List<String> under = headings;
    for (String line : text.lines().filter(l -> !l.isBlank()).toList()) {
      if (line.startsWith("# ")) {
        under = List.of(line.substring(2).split("\\|"));
      } else {
        line(under, line.split("\\|", -1));
      }
    }
  }

  private void line(List<String> under, String[] cells) {
    Map<String, Object> row = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i++) {
      put(row, under.get(i), Cells.parsed(under.get(i), cells[i].trim()));
    }
    rows.add(row);
  }

  private static void put(Map<String, Object> row, String heading, Object value) {
    if (value != null && !"".equals(value)) {
      row.put(heading, value);
    }
  }
}

package clenchbook.commands;

import clenchbook.book.understood.Understood;
import clenchbook.book.understood.UnderstoodColumn;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Tells in lines what each sheet and column was taken for. */
final class UnderstoodLines {
  private UnderstoodLines() {}

  /** The lines: what is not read, then a head for each sheet and a line for each of its columns. */
  static List<String> of(Understood understood) {
    List<String> lines = new ArrayList<>();
    lines.add("What was understood");
    understood
        .headingsFile()
        .ifPresent(name -> lines.add("  your own words are taken from " + name));
    if (!understood.hidden().isEmpty()) {
      lines.add("  hidden sheets that are read: " + String.join(", ", understood.hidden()));
    }
    notRead(lines, understood);
    read(lines, understood);
    lines.add("");
    return List.copyOf(lines);
  }

  private static void notRead(List<String> lines, Understood understood) {
    Map<String, List<String>> sheets = new LinkedHashMap<>();
    for (UnderstoodColumn column : understood.columns()) {
      if (!column.read() && column.takenAs().isEmpty()) {
        List<String> headings = sheets.computeIfAbsent(column.sheet(), unused -> new ArrayList<>());
        if (!column.heading().isEmpty()) {
          headings.add(shown(column));
        }
      } else if (!column.read()) {
        lines.add(
            "  not read: "
                + column.sheet()
                + "!"
                + column.column()
                + " "
                + shown(column)
                + noted(column));
      }
    }
    sheets.forEach(
        (sheet, headings) ->
            lines.add(
                "  not read: the sheet "
                    + sheet
                    + (headings.isEmpty() ? "" : " (" + String.join(", ", headings) + ")")));
  }

  private static void read(List<String> lines, Understood understood) {
    String sheet = "";
    for (UnderstoodColumn column : understood.columns()) {
      if (column.read()) {
        String head = "  " + column.sheet() + " is read as " + column.takenAs();
        if (!head.equals(sheet)) {
          lines.add(head);
          sheet = head;
        }
        String place = column.column().isEmpty() ? "" : column.column() + " ";
        lines.add(
            "    "
                + place
                + shown(column)
                + " = "
                + column.meaning()
                + ", by "
                + column.how().word()
                + noted(column));
      }
    }
  }

  private static String shown(UnderstoodColumn column) {
    String heading = column.heading().replaceAll("\\R", " ");
    return heading.isEmpty() ? "(no heading)" : "'" + heading + "'";
  }

  private static String noted(UnderstoodColumn column) {
    return column.note().isEmpty() ? "" : " (" + column.note() + ")";
  }
}

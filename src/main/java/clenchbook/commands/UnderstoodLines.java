package clenchbook.commands;

import clenchbook.book.understood.How;
import clenchbook.book.understood.Understood;
import clenchbook.book.understood.UnderstoodColumn;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Tells in lines what each sheet and column was taken for. */
final class UnderstoodLines {
  private static final String LINE = "  ";
  private static final String COLUMN = "    ";

  private UnderstoodLines() {}

  /** The lines: what is not read, then a head for each sheet and a line for each of its columns. */
  static List<Message> of(Understood understood) {
    List<Message> lines = new ArrayList<>();
    lines.add(Message.of("commands.understood.title"));
    understood
        .headingsFile()
        .ifPresent(name -> lines.add(in(LINE, Message.of("commands.understood.headings", name))));
    if (!understood.hidden().isEmpty()) {
      lines.add(
          in(LINE, Message.of("commands.understood.hidden", List.copyOf(understood.hidden()))));
    }
    notRead(lines, understood);
    read(lines, understood);
    lines.add(Message.NONE);
    return List.copyOf(lines);
  }

  private static void notRead(List<Message> lines, Understood understood) {
    Map<String, List<Object>> sheets = new LinkedHashMap<>();
    for (UnderstoodColumn column : understood.columns()) {
      if (!column.read() && column.takenAs().isEmpty()) {
        List<Object> headings = sheets.computeIfAbsent(column.sheet(), unused -> new ArrayList<>());
        if (!column.heading().isEmpty()) {
          headings.add(shown(column));
        }
      } else if (!column.read()) {
        lines.add(
            in(
                LINE,
                Message.of(
                    "commands.understood.notRead",
                    column.sheet() + "!" + column.column(),
                    shown(column),
                    noted(column))));
      }
    }
    sheets.forEach(
        (sheet, headings) ->
            lines.add(
                in(
                    LINE,
                    headings.isEmpty()
                        ? Message.of("commands.understood.sheetNotRead", sheet)
                        : Message.of("commands.understood.sheetNotReadWith", sheet, headings))));
  }

  private static void read(List<Message> lines, Understood understood) {
    Message sheet = Message.NONE;
    for (UnderstoodColumn column : understood.columns()) {
      if (column.read()) {
        Message head =
            in(LINE, Message.of("commands.understood.readAs", column.sheet(), column.takenAs()));
        if (!head.equals(sheet)) {
          lines.add(head);
          sheet = head;
        }
        String place = column.column().isEmpty() ? "" : column.column() + " ";
        lines.add(
            in(
                COLUMN,
                Message.of(
                    "commands.understood.column",
                    place,
                    shown(column),
                    column.meaning(),
                    how(column.how()),
                    noted(column))));
      }
    }
  }

  private static Message shown(UnderstoodColumn column) {
    String heading = column.heading().replaceAll("\\R", " ");
    return heading.isEmpty()
        ? Message.of("commands.understood.noHeading")
        : Message.literal("'" + heading + "'");
  }

  private static Message in(String blanks, Message line) {
    return Message.joined("", List.of(Message.literal(blanks), line));
  }

  private static Message how(How how) {
    return switch (how) {
      case NAME -> Message.of("commands.understood.byName");
      case KNOWN_WORD -> Message.of("commands.understood.byKnownWord");
      case HEADINGS -> Message.of("commands.understood.byHeadings");
      case NOT_READ -> Message.of("commands.understood.byNothing");
    };
  }

  private static Message noted(UnderstoodColumn column) {
    return column.note().isEmpty()
        ? Message.NONE
        : Message.joined("", List.of(Message.literal(" ("), column.note(), Message.literal(")")));
  }
}

package clenchbook.reading.cells;

import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.words.SameWords;
import clenchbook.reading.words.YesNo;
import clenchbook.texts.Message;
import java.util.Map;
import java.util.Optional;

/** Words in a cell: a text, one of few words, yes or no, a size. */
public final class WordCell {
  private static final Message SOME_TEXT = Message.of("cells.text.some");
  private static final Message YES_OR_NO = Message.of("cells.yesNo.expected");
  private static final Message SOME_SIZE = Message.of("cells.size.some");

  private WordCell() {}

  /** A text of one line, trimmed; empty when blank or not sound. */
  static String oneLine(SoundCells row, String heading, Severity severity) {
    String text = text(row, heading, severity);
    return hasBreak(text) ? text.replaceAll("\\s*\\R\\s*", " ") : text;
  }

  /** A text that may have several lines. */
  static String lines(SoundCells row, String heading) {
    String text = text(row, heading, Severity.WARNING);
    return hasBreak(text) ? text.replaceAll("\\R", "\n") : text;
  }

  /** A text as it stands, trimmed; one that was cut is said. */
  static String text(SoundCells row, String heading, Severity severity) {
    Optional<Cell> found = row.sound(heading, severity, SOME_TEXT);
    if (found.isEmpty()) {
      return "";
    }
    if (found.get() instanceof Cell.Text text && text.cut()) {
      Message problem = Message.of("cells.text.tooLong", row.called(heading));
      row.warn(ProblemKind.TEXT_CUT, heading, problem, Message.of("cells.text.short"));
    }
    return trimmed(found.get().shown());
  }

  /** Most texts have one line, and need no search for breaks. */
  private static boolean hasBreak(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c == 0x85 || c == 0x2028 || c == 0x2029) {
        return true;
      }
    }
    return false;
  }

  /** A text without the spaces around it, those a program or a web page leaves included. */
  public static String trimmed(String text) {
    int from = 0;
    int to = text.length();
    while (from < to && isSpace(text.charAt(from))) {
      from++;
    }
    while (to > from && isSpace(text.charAt(to - 1))) {
      to--;
    }
    return text.substring(from, to);
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '\uFEFF' || c == 0;
  }

  /** One of few words; another one is said. */
  static <T> Optional<T> choice(
      SoundCells row, String heading, Map<String, T> words, Message expected) {
    String written = oneLine(row, heading, Severity.WARNING);
    if (written.isEmpty()) {
      return Optional.empty();
    }
    Optional<T> found = Optional.ofNullable(words.get(SameWords.bare(written)));
    if (found.isEmpty()) {
      Message problem =
          Message.of("cells.choice.unknown", row.called(heading), SoundCells.brief(written));
      row.warn(ProblemKind.CHOICE_UNKNOWN, heading, problem, expected);
    }
    return found;
  }

  /** Yes or no. */
  static Optional<Boolean> yesNo(SoundCells row, String heading) {
    Optional<Cell> found = row.sound(heading, Severity.WARNING, YES_OR_NO);
    Optional<Boolean> answer = found.flatMap(YesNo::read);
    if (found.isPresent() && answer.isEmpty()) {
      Message problem =
          Message.of("cells.yesNo.neither", row.called(heading), SoundCells.oneLine(found.get()));
      row.warn(ProblemKind.YES_NO_UNREADABLE, heading, problem, YES_OR_NO);
    }
    return answer;
  }

  /** One size, recovered where a spreadsheet changed it. */
  static String size(SoundCells row, String heading) {
    Optional<Cell> found = row.sound(heading, Severity.WARNING, SOME_SIZE);
    if (found.isEmpty()) {
      return "";
    }
    SizeCell.Reading reading = row.rules().size(found.get());
    if (reading.changed()) {
      saySizeChanged(row, heading, found.get(), reading);
    }
    return row.rules().once(trimmed(reading.text()));
  }

  private static void saySizeChanged(
      SoundCells row, String heading, Cell cell, SizeCell.Reading reading) {
    String shown = SoundCells.oneLine(cell);
    Message expected = Message.of("cells.size.asText");
    if (reading.text().isEmpty()) {
      Message problem = Message.of("cells.size.lost", row.called(heading), shown);
      row.warn(ProblemKind.SIZE_LOST, heading, problem, expected);
    } else {
      Message problem = Message.of("cells.size.recovered", shown, reading.text());
      row.warn(ProblemKind.SIZE_RECOVERED, heading, problem, expected);
    }
  }
}

package clenchbook.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** The table of the speed page, between two marks; the rest of the page is left alone. */
final class SpeedTable {
  private static final String BEGIN = "<!-- measured: begin -->";
  private static final String END = "<!-- measured: end -->";

  private SpeedTable() {}

  /** Puts the rows in the place of those there. */
  static void write(Path page, String facts, List<Row> rows) throws IOException {
    String text = Files.readString(page);
    int begin = text.indexOf(BEGIN);
    int end = text.indexOf(END);
    if (begin < 0 || end < begin) {
      throw new IOException("no place for the table in " + page);
    }
    String before = text.substring(0, begin + BEGIN.length());
    Files.writeString(page, before + "\n" + table(facts, rows) + text.substring(end));
  }

  private static String table(String facts, List<Row> rows) {
    return rows.stream()
        .map(Row::markdown)
        .collect(
            Collectors.joining(
                "\n",
                facts
                    + "\n\n| what | target | ours | floor | ours ÷ floor |\n"
                    + "| --- | --- | --- | --- | --- |\n",
                "\n"));
  }
}

package clenchbook.bankfiles;

import clenchbook.bankfiles.CsvHeadings.Meaning;
import clenchbook.texts.Message;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a bank's CSV: finds what parts the fields and the row of headings, then reads row by row.
 * Titles above and sums below, which bear no day, are passed over; a row with a day and no money
 * ends the reading, because a file cut short looks like that.
 */
final class BankCsvReader {
  private static final char[] DELIMITERS = {';', '\t', ',', '|'};
  private static final int SAMPLE = 1 << 15;
  private static final int LAST_HEADING = 60;
  private static final int MOST_CELLS = 300;

  private final StatementText text;
  private final CSVFormat format;

  private BankCsvReader(StatementText text, char delimiter) {
    this.text = text;
    this.format =
        CSVFormat.Builder.create()
            .setDelimiter(delimiter)
            .setQuote('"')
            .setIgnoreEmptyLines(false)
            .setTrailingData(true)
            .get();
  }

  static void read(StatementText text, String file, Hints hints, Intake intake) throws IOException {
    for (char delimiter : delimiters(text)) {
      BankCsvReader reader = new BankCsvReader(text, delimiter);
      Optional<Heading> heading = reader.heading();
      if (heading.isPresent()) {
        reader.read(heading.get(), file, hints, intake);
        return;
      }
    }
    throw new UnreadableStatement(Message.of("bankfiles.kind.none"));
  }

  /**
   * The row of headings.
   *
   * @param row its number, from 1
   * @param columns where each meaning stands
   */
  private record Heading(int row, Map<Meaning, List<Integer>> columns) {}

  /** The marks that may part the fields, the most frequent in the first lines first. */
  private static List<Character> delimiters(StatementText text) throws IOException {
    char[] sample = new char[SAMPLE];
    int length;
    try (BufferedReader reader = text.open()) {
      length = Math.max(0, reader.read(sample));
    }
    String start = new String(sample, 0, length);
    if (start.chars().anyMatch(c -> c < ' ' && c != '\n' && c != '\r' && c != '\t')) {
      throw new UnreadableStatement(Message.of("bankfiles.kind.noText"));
    }
    List<Character> marks = new ArrayList<>();
    for (char mark : DELIMITERS) {
      if (start.indexOf(mark) >= 0) {
        marks.add(mark);
      }
    }
    return marks;
  }

  private Optional<Heading> heading() throws IOException {
    List<Heading> found = new ArrayList<>(1);
    rows(
        (number, cells) -> {
          CsvHeadings.of(cells).ifPresent(columns -> found.add(new Heading(number, columns)));
          return found.isEmpty() && number < LAST_HEADING;
        });
    return found.stream().findFirst();
  }

  private void read(Heading heading, String file, Hints hints, Intake intake) throws IOException {
    CsvRows rows = new CsvRows(heading.columns(), hints, file, intake);
    rows(
        (number, cells) -> {
          if (number > heading.row()) {
            rows.witness(cells);
          }
          return true;
        });
    rows(
        (number, cells) -> {
          if (number > heading.row()) {
            rows.take(number, cells);
          }
          return true;
        });
    rows.done();
  }

  /** Hands on each row with its number, until the taker wants no more. */
  private void rows(BiPredicate<Integer, List<String>> taker) throws IOException {
    try (GuardedReader guard = new GuardedReader(text.open());
        CSVParser parser = CSVParser.builder().setReader(guard).setFormat(format).get()) {
      for (CSVRecord line : parser) {
        guard.recordEnded();
        int number = Math.toIntExact(parser.getRecordNumber());
        if (!taker.test(number, cells(line))) {
          break;
        }
      }
    } catch (UncheckedIOException | IllegalStateException broken) {
      throw new UnreadableStatement(
          Message.of("bankfiles.damaged", Texts.line(String.valueOf(broken.getMessage()))), broken);
    }
  }

  private static List<String> cells(CSVRecord line) {
    int size = Math.min(line.size(), MOST_CELLS);
    List<String> cells = new ArrayList<>(size);
    for (int column = 0; column < size; column++) {
      cells.add(Texts.line(line.get(column)));
    }
    return cells;
  }
}

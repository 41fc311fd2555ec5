package clenchbook.reading.rates;

import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateUnit;
import clenchbook.tax.rates.UnusableRate;
import clenchbook.texts.Message;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Turns one rates file, {@code code,name,value,unit,from,to,source,section,checked}, into rows; a
 * tenth column {@code text} may follow.
 */
final class RateFileReader {
  static final List<String> COLUMNS =
      List.of("code", "name", "value", "unit", "from", "to", "source", "section", "checked");

  /** A tenth column that may follow: keys of texts. */
  private static final String TEXT = "text";

  /** Of the tables among the program's resources. */
  static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setCommentMarker('#')
          .setIgnoreEmptyLines(true)
          .setTrim(true)
          .get();

  private RateFileReader() {}

  static List<Rate> read(String table, Reader reader, boolean overlaid) throws IOException {
    List<Rate> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(reader, FORMAT)) {
      requireColumns(table, parser);
      for (CSVRecord record : parser) {
        rows.add(row(table, record, parser.getCurrentLineNumber(), overlaid));
      }
    } catch (UncheckedIOException | IllegalArgumentException unreadable) {
      throw new RefusedRatesException(Message.of("tax.refused.noTable", table));
    }
    return rows;
  }

  private static void requireColumns(String table, CSVParser parser) {
    List<String> names = parser.getHeaderNames();
    boolean texts = names.equals(Stream.concat(COLUMNS.stream(), Stream.of(TEXT)).toList());
    if (!texts && !names.equals(COLUMNS)) {
      throw new RefusedRatesException(
          Message.of("tax.refused.heading", table, String.join(",", COLUMNS)));
    }
  }

  private static Rate row(String table, CSVRecord record, long line, boolean overlaid) {
    try {
      return parse(table, record, overlaid);
    } catch (UnusableRate faulty) {
      throw new RefusedRatesException(
          Message.of("tax.refused.line", table, line, faulty.message()));
    }
  }

  private static Rate parse(String table, CSVRecord record, boolean overlaid) {
    if (!record.isConsistent()) {
      throw new UnusableRate(Message.of("tax.refused.columns", record.size()));
    }
    return new Rate(
        table,
        record.get("code").toLowerCase(Locale.ROOT),
        record.get("name"),
        record.get("value"),
        unit(record.get("unit")),
        day(record.get("from")),
        day(record.get("to")),
        record.get("source"),
        record.get("section"),
        checked(record.get("checked")),
        text(record, overlaid),
        overlaid);
  }

  /** The program's texts say the program's rows; whoever lays a row over it has own words. */
  private static String text(CSVRecord record, boolean overlaid) {
    return overlaid || !record.isMapped(TEXT) ? "" : record.get(TEXT);
  }

  private static RateUnit unit(String text) {
    return RateUnit.find(text)
        .orElseThrow(() -> new UnusableRate(Message.of("tax.refused.unit", text)));
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException unreadable) {
      throw new UnusableRate(Message.of("tax.refused.day", text));
    }
  }

  private static Optional<LocalDate> checked(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(day(text));
  }
}

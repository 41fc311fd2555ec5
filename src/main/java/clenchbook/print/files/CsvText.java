package clenchbook.print.files;

import clenchbook.reports.blocks.FigureTable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes tables of figures as CSV: RFC 4180, UTF-8 without a byte order mark, comma, CRLF, a header
 * row.
 *
 * <p>A text that a spreadsheet would take for a formula gets an apostrophe in front (OWASP, "CSV
 * Injection"); a plain number, negative ones too, stays as it is.
 */
public final class CsvText {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setRecordSeparator("\r\n").get();

  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?([eE][+-]?\\d+)?");

  /** The marks that begin a formula, wide forms of East Asian keyboards too. */
  private static final String FORMULA_MARKS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

  private CsvText() {}

  /**
   * A table as the bytes of a CSV file.
   *
   * @param table header and rows
   * @return UTF-8
   */
  public static byte[] of(FigureTable table) {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
      printer.printRecord(table.columns());
      for (List<String> row : table.rows()) {
        printer.printRecord(row.stream().map(CsvText::harmless).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory takes every letter", e);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Writes a table row by row, so that its length needs no memory.
   *
   * @param out where to; flushed, not closed
   * @param columns the header
   * @param rows its rows, read once
   * @throws IOException when it can't be written
   */
  public static void write(OutputStream out, List<String> columns, Stream<List<String>> rows)
      throws IOException {
    // Closing the printer would close what the caller closes.
    CSVPrinter printer =
        new CSVPrinter(new OutputStreamWriter(out, StandardCharsets.UTF_8), FORMAT);
    printer.printRecord(columns);
    for (Iterator<List<String>> each = rows.iterator(); each.hasNext(); ) {
      printer.printRecord(each.next().stream().map(CsvText::harmless).toList());
    }
    printer.flush();
  }

  /**
   * A cell that no spreadsheet runs as a formula.
   *
   * @param cell the text of a cell
   * @return the same, with an apostrophe in front where it began like a formula
   */
  public static String harmless(String cell) {
    String seen = cell.stripLeading();
    boolean suspicious =
        !cell.isEmpty()
            && (FORMULA_MARKS.indexOf(cell.charAt(0)) >= 0
                || (!seen.isEmpty() && FORMULA_MARKS.indexOf(seen.charAt(0)) >= 0));
    return suspicious && !NUMBER.matcher(cell).matches() ? "'" + cell : cell;
  }
}

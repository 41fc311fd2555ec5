package clenchbook.workload;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.jobs.WrittenBook;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.workload.outlook.ShapeDifference;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The figures of a book, asked by period and measure. */
final class Figures {

  private final FigureTable table;

  private Figures(FigureTable table) {
    this.table = table;
  }

  static Figures of(FigureTable table) {
    return new Figures(table);
  }

  /** The year to date that starts on 1 January. */
  static Figures of(WrittenBook book, String asAt) {
    return of(book, asAt, Optional.empty());
  }

  static Figures of(WrittenBook book, String asAt, Optional<ShapeDifference> hotLessCold) {
    LocalDate day = LocalDate.parse(asAt);
    return new Figures(
        WorkloadFigures.of(
            WorkYear.of(book.book(), book.jobs().all(), day.withDayOfYear(1), day, hotLessCold)));
  }

  /** One column of the only row of a period and measure. */
  String cell(String period, String measure, String column) {
    List<List<String>> rows =
        table.rows().stream()
            .filter(row -> row.get(0).equals(period) && row.get(1).equals(measure))
            .toList();
    assertEquals(1, rows.size(), period + ", " + measure);
    return rows.get(0).get(table.columns().indexOf(column));
  }

  String value(String period, String measure) {
    return cell(period, measure, "value");
  }

  boolean has(String period, String measure) {
    return table.rows().stream()
        .anyMatch(row -> row.get(0).equals(period) && row.get(1).equals(measure));
  }

  FigureTable table() {
    return table;
  }
}

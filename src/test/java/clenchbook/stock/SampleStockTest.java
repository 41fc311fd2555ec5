package clenchbook.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.jobs.JobResolver;
import clenchbook.jobs.Jobs;
import clenchbook.reading.BookReader;
import clenchbook.reading.ReadOptions;
import clenchbook.reports.blocks.Block;
import clenchbook.schedule.DueFindings;
import clenchbook.schedule.DueList;
import clenchbook.schedule.due.DueDates;
import clenchbook.stock.orders.StockLine;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("samples")
class SampleStockTest {

  // Outside check: a recount from the workbook's cells that shares no code with the program.
  @ParameterizedTest
  @CsvSource({
    "thornfield-metric.xlsx, d/M/uuuu, 2026-10",
    "thornfield-metric.xlsx, d/M/uuuu, 2026-03",
    "cedar-hollow-imperial.xlsx, M/d/uuuu, 2026-10"
  })
  void the_sample_years_closing_stock_equals_an_independent_recount(
      String sample, String textDates, String month) throws Exception {
    Path file = Path.of("sample-workbooks", sample);
    LocalDate end = YearMonth.parse(month).atEndOfMonth();
    Map<String, String> recount = new TreeMap<>();
    CellRecount.of(file, textDates, end).forEach((k, pieces) -> recount.put(k, text(pieces)));
    Map<String, String> closing = new TreeMap<>();
    for (StockLine line : lines(file, YearMonth.parse(month))) {
      String key = line.month().shelf().item() + "|" + line.month().shelf().size();
      closing.put(key, text(line.month().closing()));
      recount.putIfAbsent(key, text(BigDecimal.ZERO));
    }
    assertEquals(recount, closing);
    assertTrue(closing.values().stream().filter(pieces -> !pieces.startsWith("0.")).count() > 10);
  }

  @ParameterizedTest
  @ValueSource(strings = {"thornfield-metric.xlsx", "cedar-hollow-imperial.xlsx"})
  void every_number_of_the_report_and_the_page_stands_in_a_table(String sample) throws Exception {
    Jobs jobs = jobs(Path.of("sample-workbooks", sample));
    for (String month : List.of("2026-06", "2026-10")) {
      DueFindings due = DueList.of(jobs, YearMonth.parse(month));
      StockFindings stock = Stock.of(jobs, due, YearMonth.parse(month));
      Set<String> figures = new TreeSet<>();
      Stream.concat(stock.tables().stream(), due.tables().stream())
          .forEach(table -> table.rows().forEach(row -> row.forEach(c -> add(figures, c))));
      Set<String> printed = new TreeSet<>();
      stock.report().files().stream()
          .flatMap(file -> file.blocks().stream())
          .forEach(block -> numbers(block, printed));
      stock.pageBlocks().forEach(block -> numbers(block, printed));
      due.pageBlocks().forEach(block -> numbers(block, printed));
      due.horseSheet().blocks().forEach(block -> numbers(block, printed));
      assertTrue(printed.size() > 100, "only " + printed.size());
      printed.removeAll(figures);
      assertEquals(Set.of(), printed, month);
    }
  }

  /** A file's number, and the same with the two decimals that people read at most. */
  private static void add(Set<String> figures, String cell) {
    figures.add(cell);
    if (cell.matches("-?\\d+\\.\\d{3,}")) {
      BigDecimal rounded = new BigDecimal(cell).setScale(2, RoundingMode.HALF_UP);
      figures.add(rounded.stripTrailingZeros().toPlainString());
    }
  }

  private static void numbers(Block block, Set<String> printed) {
    Stream<String> texts =
        block instanceof Block.Table table
            ? table.rows().stream().flatMap(row -> row.cells().stream()).map(Block.Cell::text)
            : block instanceof Block.KeyFigures key
                ? key.figures().stream().map(Block.KeyFigure::value)
                : Stream.of();
    texts
        .map(text -> text.replaceAll("[,£$\u00A0]| ?(horses?|kg|bar)$", "").replace('\u2212', '-'))
        .filter(text -> text.matches("-?\\d+(\\.\\d+)?"))
        .forEach(printed::add);
  }

  private static Jobs jobs(Path file) throws Exception {
    return JobResolver.resolve(BookReader.read(file, ReadOptions.of(Locale.ROOT)).book());
  }

  private static List<StockLine> lines(Path file, YearMonth month) throws Exception {
    Jobs jobs = jobs(file);
    return StockMonth.of(jobs, DueDates.of(jobs, month.atEndOfMonth()), month).lines();
  }

  private static String text(BigDecimal pieces) {
    return pieces.setScale(6, RoundingMode.HALF_UP).toPlainString();
  }
}

package clenchbook.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.duelist.DueDates;
import clenchbook.job.JobResolver;
import clenchbook.job.Jobs;
import clenchbook.workbook.BookReader;
import clenchbook.workbook.ReadOptions;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  private static List<StockLine> lines(Path file, YearMonth month) throws Exception {
    Jobs jobs = JobResolver.resolve(BookReader.read(file, ReadOptions.of(Locale.ROOT)).book());
    return StockMonth.of(jobs, DueDates.of(jobs, month.atEndOfMonth()), month).lines();
  }

  private static String text(BigDecimal pieces) {
    return pieces.setScale(6, RoundingMode.HALF_UP).toPlainString();
  }
}

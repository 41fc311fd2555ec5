package clenchbook.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import clenchbook.book.Setting;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import clenchbook.reading.rates.RateFiles;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateTable;
import clenchbook.tax.rates.RateTables;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.StockValue;
import clenchbook.tax.year.TaxYear;
import clenchbook.tax.year.YearEndInput;
import clenchbook.tax.year.YearStart;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The program's rates overlaid with next year's: 2026 stays as it is, and 2027 can be told. The
 * rows are this year's carried on by a year, for want of the real ones; one is changed, to be seen.
 */
class NextYearsRatesTest {
  private static final RateTables TABLES = untilThisYear();
  private static final LocalDate FIRST_END = LocalDate.of(2026, 12, 31);
  private static final LocalDate LAST_END = LocalDate.of(2027, 12, 31);
  private static final RateTables WITH_NEXT = TABLES.overlaidWith(nextYear());

  /** The program's own tables, without what they may know by now of the one rate looked at. */
  private static RateTables untilThisYear() {
    return new RateTables(RateFiles.bundled().tables().stream().map(table -> cut(table)).toList());
  }

  private static RateTable cut(RateTable table) {
    List<Rate> rows =
        table.rows().stream()
            .filter(row -> !isMileage(row) || row.from().isBefore(LocalDate.of(2027, 1, 1)))
            .toList();
    return new RateTable(table.name(), rows);
  }

  private static boolean isMileage(Rate row) {
    return row.table().equals("us/mileage") && row.code().equals("business");
  }

  private static List<Rate> nextYear() {
    List<Rate> next = new ArrayList<>();
    for (RateTable table : TABLES.tables()) {
      for (String code : table.codes()) {
        Rate last =
            table.rows().stream()
                .filter(row -> row.code().equals(code))
                .reduce((earlier, later) -> later.to().isAfter(earlier.to()) ? later : earlier)
                .orElseThrow();
        if (!last.to().isBefore(FIRST_END) && !last.to().isAfter(LAST_END)) {
          next.add(carriedOn(last));
        }
      }
    }
    return next;
  }

  private static Rate carriedOn(Rate row) {
    return new Rate(
        row.table(),
        row.code(),
        row.name(),
        isMileage(row) ? "0.74" : row.value(),
        row.unit(),
        row.to().plusDays(1),
        row.to().plusYears(1),
        "invented for a test",
        "",
        Optional.empty(),
        true);
  }

  static List<String> regimes() {
    return Jurisdictions.words();
  }

  /** Costs, a vehicle, an asset and money on every day on which a country's year may begin. */
  private static WrittenBook book(String regime, int year) {
    WrittenBook book = new WrittenBook().setting(Setting.TAX_REGIME, regime);
    for (String month : List.of("02", "05", "08", "11")) {
      for (int of = year; of <= year + 1; of++) {
        String on = "Date: " + of + "-" + month + "-10, ";
        book.payment(on + "Owner: Ash, Amount: 5000")
            .purchase(on + "Supplier: A, Category: Advertising, Gross: 50")
            .purchase(on + "Supplier: B, Category: Truck fuel, Gross: 80")
            .purchase(on + "Supplier: C, Category: Client gifts, Gross: 20")
            .purchase(on + "Supplier: D, Item: keg, Quantity: 9, Net: 100")
            .purchase(on + "Supplier: E, Category: Meals, Gross: 30")
            .trip(on + "From: Home, To: Oak, Distance: 100, Purpose: round");
      }
    }
    return book.asset("Asset: Truck, Bought: 2025-02-01, Cost: 30000, Class: truck")
        .asset("Asset: Anvil, Bought: " + (year + 1) + "-02-01, Cost: 900, Class: anvil");
  }

  private static YearEndFindings end(WrittenBook book, int year, RateTables rates) {
    Jobs jobs = book.jobs();
    Regime regime =
        Jurisdictions.find(book.book().settings().text(Setting.TAX_REGIME)).orElseThrow().regime();
    TaxYear taxYear = TaxYear.of(regime, year, YearStart.of(regime, book.book().settings(), rates));
    return YearEnd.of(
        new YearEndInput(jobs, List.of(), taxYear, Optional.empty(), rates, StockValue.NONE));
  }

  @Test
  void no_day_of_the_programs_own_rows_is_told_otherwise() {
    for (RateTable table : TABLES.tables()) {
      for (Rate row : table.rows()) {
        for (LocalDate day : List.of(row.from(), row.to())) {
          assertEquals(
              Optional.of(row.value()),
              WITH_NEXT.find(table.name(), row.code(), day).map(Rate::value),
              table.name() + " " + row.code() + " " + day);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("regimes")
  void the_year_before_is_told_as_it_was(String regime) {
    WrittenBook book = book(regime, 2026);
    YearEndFindings before = end(book, 2026, TABLES);
    YearEndFindings after = end(book, 2026, WITH_NEXT);
    assertEquals(before.notes(), after.notes());
    assertEquals(before.errors(), after.errors());
    assertEquals(tables(before), tables(after));
  }

  private static List<FigureTable> tables(YearEndFindings findings) {
    return Stream.concat(findings.figures().stream(), findings.accountant().stream())
        .filter(table -> !table.name().equals("rates"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("regimes")
  void the_next_year_is_told_without_a_rate_missing(String regime) {
    assertEquals(List.of(), end(book(regime, 2027), 2027, WITH_NEXT).errors());
  }

  /** 400 miles at the overlaid 0.74; without it the page says which rate is missing. */
  @Test
  void a_rate_laid_over_counts_and_one_that_is_missing_is_told() {
    WrittenBook book = book("us", 2027).setting(Setting.DISTANCE_UNIT, "mile");
    assertEquals(Optional.of("296.00"), YearBook.amount(end(book, 2027, WITH_NEXT), "9"));
    assertFalse(end(book, 2027, TABLES).errors().isEmpty());
  }
}

package clenchbook.reading.rates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateTable;
import clenchbook.tax.rates.RateTables;
import clenchbook.tax.rates.RateUnit;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BundledRatesTest {
  private static final RateTables TABLES = RateFiles.bundled();

  @Test
  void every_file_of_the_rates_folder_is_read() throws IOException {
    Path folder = Path.of("src/main/resources/rates");
    try (Stream<Path> files = Files.walk(folder)) {
      Set<String> there =
          files
              .filter(file -> file.toString().endsWith(".csv"))
              .map(
                  file -> folder.relativize(file).toString().replace('\\', '/').replace(".csv", ""))
              .collect(Collectors.toSet());
      assertEquals(
          there, TABLES.tables().stream().map(RateTable::name).collect(Collectors.toSet()));
    }
  }

  @Test
  void a_row_that_nobody_compared_with_its_source_says_so() {
    for (RateTable table : TABLES.tables()) {
      for (Rate rate : table.rows()) {
        boolean unchecked = rate.checked().isEmpty();
        boolean saysSo =
            rate.source().contains("from memory") || rate.source().contains("common practice");
        assertEquals(unchecked, saysSo, rate.toString());
      }
    }
  }

  /** IRS notices as reported; the days on either side of each change. */
  @ParameterizedTest
  @CsvSource({
    "2019-01-01,0.58", "2019-12-31,0.58", "2020-01-01,0.575", "2021-06-01,0.56", "2022-01-01,0.585",
    "2022-06-30,0.585", "2022-07-01,0.625", "2022-12-31,0.625", "2023-01-01,0.655",
        "2024-02-29,0.67",
    "2025-01-01,0.70", "2026-12-31,0.725"
  })
  void standard_mileage_rate_goes_by_the_day(LocalDate day, BigDecimal rate) {
    assertEquals(
        0, rate.compareTo(TABLES.find("us/mileage", "business", day).orElseThrow().amount()));
  }

  @Test
  void a_year_the_table_lacks_is_empty_never_the_year_before() {
    assertTrue(TABLES.find("us/mileage", "business", LocalDate.of(2027, 1, 1)).isEmpty());
    assertTrue(TABLES.find("us/mileage", "business", LocalDate.of(2018, 12, 31)).isEmpty());
    assertTrue(
        TABLES.find("us/self-employment", "wage base", LocalDate.of(2027, 12, 31)).isEmpty());
    assertTrue(TABLES.find("uk/mileage", "first miles", LocalDate.of(2027, 4, 6)).isEmpty());
  }

  /** Social Security Administration, contribution and benefit base by year. */
  @ParameterizedTest
  @CsvSource({
    "2019,132900",
    "2020,137700",
    "2021,142800",
    "2022,147000",
    "2023,160200",
    "2024,168600",
    "2025,176100",
    "2026,184500"
  })
  void wage_base_by_year(int year, BigDecimal base) {
    Rate rate =
        TABLES.find("us/self-employment", "wage base", LocalDate.of(year, 12, 31)).orElseThrow();
    assertEquals(base, rate.amount());
  }

  /** IRS Publication 946: each column of Tables adds to 100.00 exactly. */
  @ParameterizedTest
  @CsvSource({
    "3-year,4",
    "5-year,6",
    "7-year,8",
  })
  void each_depreciation_column_adds_to_a_hundred(String kind, int years) {
    for (String convention :
        List.of("half-year", "quarter 1", "quarter 2", "quarter 3", "quarter 4")) {
      assertEquals(
          new BigDecimal("100.00"), column(kind + " " + convention, years), kind + convention);
    }
    assertEquals(new BigDecimal("100.00"), column("5-year straight line", 6));
  }

  private static BigDecimal column(String code, int years) {
    LocalDate day = LocalDate.of(2024, 6, 1);
    return IntStream.rangeClosed(1, years)
        .mapToObj(
            year -> TABLES.find("us/depreciation", code + " " + year, day).orElseThrow().amount())
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /**
   * The first three quarters' tables come from memory, so they are recomputed: double declining
   * balance from the middle of the quarter, straight line over what is left once that gives more
   * (IRS Publication 946, figuring the deduction without tables). The printed tables round to the
   * hundredth and carry it on.
   */
  @ParameterizedTest
  @CsvSource({
    "5-year,half-year,5,0.5", "7-year,half-year,7,0.5", "3-year,half-year,3,0.5",
        "5-year,quarter 1,5,0.875",
    "5-year,quarter 2,5,0.625", "5-year,quarter 3,5,0.375", "5-year,quarter 4,5,0.125",
        "7-year,quarter 1,7,0.875",
    "7-year,quarter 2,7,0.625", "7-year,quarter 3,7,0.375", "7-year,quarter 4,7,0.125",
        "3-year,quarter 1,3,0.875",
    "3-year,quarter 2,3,0.625", "3-year,quarter 3,3,0.375", "3-year,quarter 4,3,0.125"
  })
  void depreciation_tables_agree_with_the_method_they_print(
      String kind, String convention, int life, double firstPart) {
    double left = 100;
    double yearsLeft = life;
    for (int year = 1; year <= life + 1; year++) {
      double part = year == 1 ? firstPart : Math.min(1, yearsLeft);
      double declining = left * 2 / life * part;
      double straight = left * part / yearsLeft;
      double expected = Math.max(declining, straight);
      BigDecimal printed =
          TABLES
              .find(
                  "us/depreciation", kind + " " + convention + " " + year, LocalDate.of(2024, 1, 1))
              .orElseThrow()
              .amount();
      assertEquals(expected, printed.doubleValue(), 0.0151, kind + " " + convention + " " + year);
      left -= expected;
      yearsLeft -= part;
    }
  }

  /** gov.uk, Simplified expenses if you're self-employed: vehicles. */
  @Test
  void uk_simplified_mileage() {
    LocalDate day = LocalDate.of(2025, 4, 6);
    assertEquals(
        new BigDecimal("0.45"),
        TABLES.find("uk/mileage", "first miles", day).orElseThrow().amount());
    assertEquals(
        new BigDecimal("0.25"),
        TABLES.find("uk/mileage", "further miles", day).orElseThrow().amount());
    assertEquals(
        new BigDecimal("10000"),
        TABLES.find("uk/mileage", "first miles limit", day).orElseThrow().amount());
    assertEquals(
        new BigDecimal("0.24"),
        TABLES.find("uk/mileage", "motorcycle", day).orElseThrow().amount());
  }

  /** VAT Notice 700 as reported: the threshold rose on 1 April 2024. */
  @Test
  void uk_registration_threshold_goes_by_the_day() {
    LocalDate before = LocalDate.of(2024, 3, 31);
    assertEquals(
        new BigDecimal("85000"),
        TABLES.find("uk/vat", "registration", before).orElseThrow().amount());
    assertEquals(
        new BigDecimal("90000"),
        TABLES.find("uk/vat", "registration", before.plusDays(1)).orElseThrow().amount());
  }

  /** Where Schedule C put "other expenses": 2023 and 2025 instructions; 2024 from memory. */
  @ParameterizedTest
  @CsvSource({"2022,27a", "2023,27a", "2024,27b", "2025,27b"})
  void other_expenses_moved_between_the_forms(int year, String line) {
    assertEquals(
        line,
        TABLES.find("us/schedule-c", "other", LocalDate.of(year, 12, 31)).orElseThrow().value());
  }

  /** SA103F 2013 numbered the list one lower than the forms since. */
  @Test
  void boxes_moved_between_the_forms() {
    assertEquals(
        "16",
        TABLES.find("uk/sa103f", "cost of goods", LocalDate.of(2013, 4, 5)).orElseThrow().value());
    assertEquals(
        "17",
        TABLES.find("uk/sa103f", "cost of goods", LocalDate.of(2013, 4, 6)).orElseThrow().value());
  }

  @Test
  void every_category_leads_to_a_line_of_its_regime() {
    Set<String> special =
        Set.of(
            "vehicle",
            "private",
            "tax paid over",
            "asset",
            "not an expense",
            "not allowed",
            "parking and tolls",
            "restaurant meals");
    for (String regime : List.of("us", "uk")) {
      Set<String> lines =
          Set.copyOf(TABLES.table(regime.equals("us") ? "us/schedule-c" : "uk/sa103f").codes());
      for (Rate word : TABLES.table(regime + "/categories").rows()) {
        assertEquals(RateUnit.WORD, word.unit());
        assertTrue(special.contains(word.value()) || lines.contains(word.value()), word.toString());
      }
    }
    assertFalse(TABLES.table("plain/categories").rows().isEmpty());
  }
}

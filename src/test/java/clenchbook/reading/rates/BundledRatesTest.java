package clenchbook.reading.rates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateTable;
import clenchbook.tax.rates.RateTables;
import clenchbook.tax.rates.RateUnit;
import clenchbook.tax.rates.Standing;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
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
            rate.standing() != Standing.VERIFIED && rate.standing() != Standing.REPORTED;
        assertEquals(unchecked, saysSo, rate.toString());
      }
    }
  }

  @Test
  void at_most_one_row_in_twenty_rests_on_memory() {
    List<Rate> facts = rows().filter(rate -> rate.standing() != Standing.PRACTICE).toList();
    long memory = facts.stream().filter(rate -> rate.standing() == Standing.MEMORY).count();
    assertTrue(memory * 20 <= facts.size(), memory + " of " + facts.size());
  }

  private static Stream<Rate> rows() {
    return TABLES.tables().stream().flatMap(table -> table.rows().stream());
  }

  /** The tables' own page counts the rows of each jurisdiction by how far they were compared. */
  @Test
  void the_tables_own_page_counts_them_rightly() throws IOException {
    String page = Files.readString(Path.of("src/main/resources/rates/README.md"));
    TreeSet<String> folders =
        rows()
            .map(rate -> rate.table().split("/")[0])
            .collect(Collectors.toCollection(TreeSet::new));
    for (String folder : folders) {
      assertTrue(
          page.contains(counted("`" + folder + "`", folder + "/")), counted(folder, folder + "/"));
    }
    assertTrue(page.contains(counted("all", "")), counted("all", ""));
  }

  private static String counted(String name, String from) {
    StringBuilder row = new StringBuilder("| " + name + " |");
    for (Standing standing : Standing.values()) {
      long count =
          rows()
              .filter(rate -> rate.table().startsWith(from) && rate.standing() == standing)
              .count();
      row.append(' ').append(count).append(" |");
    }
    return row.toString();
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

  /** The first day beyond each table, so that next year's rows break nothing here. */
  @ParameterizedTest
  @CsvSource({
    "us/mileage,business",
    "us/self-employment,wage base",
    "uk/mileage,first miles",
    "uk/national-insurance,class 4 main"
  })
  void a_year_the_table_lacks_is_empty_never_the_year_before(String table, String code) {
    List<Rate> rows =
        TABLES.table(table).rows().stream().filter(row -> row.code().equals(code)).toList();
    LocalDate after = rows.get(rows.size() - 1).to().plusDays(1);
    LocalDate before = rows.get(0).from().minusDays(1);
    assertTrue(TABLES.find(table, code, after).isEmpty());
    assertTrue(TABLES.find(table, code, before).isEmpty());
  }

  @Test
  void words_hold_in_every_year() {
    for (String subject : List.of("categories", "asset-classes")) {
      rows()
          .filter(row -> row.table().endsWith("/" + subject))
          .forEach(row -> assertTrue(row.covers(LocalDate.of(2100, 1, 1)), row.toString()));
    }
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
   * Two columns of the quarters' tables come from memory, so all are recomputed: double declining
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
        TABLES.find("uk/turnover", "limit", before).orElseThrow().amount());
    assertEquals(
        new BigDecimal("90000"),
        TABLES.find("uk/turnover", "limit", before.plusDays(1)).orElseThrow().amount());
  }

  /** Where Schedule C put "other expenses": 2021, 2024: the forms; 2023, 2025: the instructions. */
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
            "restaurant meals",
            "client gifts",
            "entertainment");
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

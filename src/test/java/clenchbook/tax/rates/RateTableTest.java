package clenchbook.tax.rates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import clenchbook.texts.InEnglish;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Dated rows that follow each other, and what an accountant's own rows do to them. */
class RateTableTest {
  private static final String FIRST = "x/mileage, car, per mile, 0.585, , 2022-01-01, 2022-06-30";
  private static final String SECOND = "x/mileage, car, per mile, 0.625, , 2022-07-01, 2022-12-31";

  private static LocalDate day(String day) {
    return LocalDate.parse(day);
  }

  private static List<String> written(RateTable table) {
    return table.rows().stream()
        .map(row -> row.code() + " " + row.value() + " " + row.from() + " " + row.to())
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "2021-12-31, none",
    "2022-01-01, 0.585",
    "2022-06-30, 0.585",
    "2022-07-01, 0.625",
    "2022-12-31, 0.625",
    "2023-01-01, none"
  })
  void a_row_holds_its_first_and_its_last_day_and_none_beyond(LocalDate day, String value) {
    RateTable table = WrittenRates.tables(SECOND, FIRST).table("x/mileage");
    assertEquals(value, table.find("car", day).map(Rate::value).orElse("none"));
    assertEquals(value.equals("none") ? 0 : 1, table.inForce(day).size());
    assertEquals(Optional.empty(), table.find("van", day));
  }

  @ParameterizedTest
  @CsvSource({
    "2022-06-30, car overlaps on 2022-06-30",
    "2022-07-02, car has a gap from 2022-07-01 to 2022-07-01",
    "2022-08-01, car has a gap from 2022-07-01 to 2022-07-31"
  })
  void a_gap_or_an_overlap_refuses_the_table(String from, String fault) {
    List<Rate> rows =
        List.of(WrittenRates.row(SECOND.replace("2022-07-01", from)), WrittenRates.row(FIRST));
    assertEquals(List.of(fault), RateTable.faults(rows).stream().map(InEnglish::said).toList());
    assertEquals(
        "rates/x/mileage.csv: " + fault,
        InEnglish.said(
            assertThrows(UnusableRate.class, () -> new RateTable("x/mileage", rows)).message()));
  }

  @Test
  void rows_of_different_codes_do_not_touch_each_other() {
    assertEquals(
        List.of(),
        RateTable.faults(
            List.of(
                WrittenRates.row(FIRST), WrittenRates.row(FIRST.replace("car", "motorcycle")))));
  }

  private static RateTable overlaid(String from, String to) {
    String over = "x/mileage, car, per mile, 0.60, , " + from + ", " + to;
    return WrittenRates.tables(FIRST, SECOND)
        .overlaidWith(List.of(WrittenRates.row(over)))
        .table("x/mileage");
  }

  @Test
  void an_overlay_counts_on_its_days_and_leaves_the_others() {
    assertEquals(
        List.of(
            "car 0.585 2022-01-01 2022-05-31",
            "car 0.60 2022-06-01 2022-07-31",
            "car 0.625 2022-08-01 2022-12-31"),
        written(overlaid("2022-06-01", "2022-07-31")));
    assertEquals(
        List.of(
            "car 0.585 2022-01-01 2022-03-31",
            "car 0.60 2022-04-01 2022-04-30",
            "car 0.585 2022-05-01 2022-06-30",
            "car 0.625 2022-07-01 2022-12-31"),
        written(overlaid("2022-04-01", "2022-04-30")));
    assertEquals(
        List.of("car 0.60 2022-01-01 2022-12-31"), written(overlaid("2022-01-01", "2022-12-31")));
  }

  @Test
  void an_overlay_may_follow_directly_but_leaves_no_gap() {
    assertEquals(3, overlaid("2023-01-01", "2023-12-31").rows().size());
    assertEquals(3, overlaid("2021-01-01", "2021-12-31").rows().size());
    assertThrows(IllegalArgumentException.class, () -> overlaid("2024-01-01", "2024-12-31"));
  }

  @Test
  void an_overlay_of_another_code_or_table_stands_beside() {
    RateTables tables =
        WrittenRates.tables(FIRST)
            .overlaidWith(
                List.of(
                    WrittenRates.row(FIRST.replace("car", "van")),
                    WrittenRates.row(FIRST.replace("x/mileage", "x/own"))));
    assertEquals(List.of("car", "van"), tables.table("x/mileage").codes());
    assertEquals(List.of("car"), tables.table("x/own").codes());
    assertEquals(List.of(), tables.overlaid(), "these rows are the program's own");
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new RateTables(
                List.of(new RateTable("x/a", List.of()), new RateTable("x/a", List.of()))));
  }

  @Test
  void a_lookup_remembers_what_it_used_and_what_it_missed() {
    RateLookup lookup = WrittenRates.lookup(FIRST, SECOND);
    assertEquals("0.625", lookup.find("x/mileage", "car", day("2022-08-01")).get().value());
    lookup.find("x/mileage", "car", day("2023-01-01"));
    lookup.ask("x/mileage", "car", day("2024-01-01"));
    lookup.ask("x/mileage", "car", day("2022-01-01"));
    lookup.lacks("x/other", day("2023-01-01"));
    assertEquals(List.of("0.585", "0.625"), lookup.used().stream().map(Rate::value).toList());
    assertEquals(
        List.of(
            new MissingRate("x/mileage", "car", day("2023-01-01")),
            new MissingRate("x/other", MissingRate.ALL, day("2023-01-01"))),
        lookup.missing());
    assertEquals(
        List.of(
            "the table rates/x/mileage.csv has no rows for 2023-01-01 (car): no such figure is"
                + " given; add them, with their source, to a rates folder beside the workbook",
            "the table rates/x/other.csv has no rows for 2023-01-01: no such figure is given; add"
                + " them, with their source, to a rates folder beside the workbook"),
        said(lookup.missing()));
  }

  private static List<String> said(List<MissingRate> missing) {
    return MissingRate.said(missing).stream().map(InEnglish::filed).toList();
  }

  @Test
  void one_sentence_names_all_that_a_table_lacks() {
    assertEquals(
        List.of(
            "the table rates/x/a.csv has no rows for 2023-01-01, 2024-01-01 (p, q): no such figure"
                + " is given; add them, with their source, to a rates folder beside the workbook"),
        said(
            List.of(
                new MissingRate("x/a", "q", day("2024-01-01")),
                new MissingRate("x/a", "p", day("2024-01-01")),
                new MissingRate("x/a", "p", day("2023-01-01")))));
  }

  @ParameterizedTest
  @CsvSource({
    "2022-06-30, 2022-07-01, 2",
    "2022-01-01, 2022-06-30, 1",
    "2022-07-01, 2022-07-01, 1",
    "2021-01-01, 2022-01-01, 1",
    "2022-12-31, 2023-12-31, 1",
    "2023-01-01, 2023-12-31, 0",
    "2020-01-01, 2021-12-31, 0"
  })
  void a_period_has_the_rows_of_any_of_its_days(LocalDate first, LocalDate last, int rows) {
    RateLookup lookup = WrittenRates.lookup(FIRST, SECOND);
    assertEquals(rows, lookup.within("x/mileage", new Period(first, last)).size());
  }

  @ParameterizedTest
  @CsvSource({
    "2021-01-01, old",
    "2022-03-01, old",
    "2022-06-30, old",
    "2022-07-01, new",
    "2030-01-01, new"
  })
  void words_do_not_expire(LocalDate day, String meaning) {
    RateLookup lookup =
        WrittenRates.lookup(
            "x/words, gas, word, old, , 2022-01-01, 2022-06-30",
            "x/words, gas, word, new, , 2022-07-01, 2022-12-31");
    assertEquals(List.of(meaning), lookup.words("x/words", day).stream().map(Rate::value).toList());
    assertEquals(List.of(), lookup.used());
  }

  @Test
  void a_table_may_begin_after_a_day() {
    RateLookup lookup = WrittenRates.lookup(FIRST, SECOND);
    assertEquals(true, lookup.beginsAfter("x/mileage", day("2021-12-31")));
    assertEquals(false, lookup.beginsAfter("x/mileage", day("2022-01-01")));
    assertEquals(false, lookup.beginsAfter("x/none", day("2022-01-01")));
    assertEquals(true, lookup.hasRows("x/mileage"));
    assertEquals(false, lookup.hasRows("x/none"));
    assertEquals(2, lookup.all("x/mileage", "car").size());
    assertEquals(0, lookup.all("x/mileage", "van").size());
  }

  @Test
  void a_percentage_is_a_factor_and_a_day_is_one_of_a_year() {
    Rate percent = WrittenRates.row("x/a, part, percent, 92.35");
    assertEquals(new BigDecimal("0.9235"), percent.factor());
    assertEquals(day("2026-04-15"), WrittenRates.row("x/a, d, day, 04-15").dayIn(2026));
    assertEquals(day("2027-01-15"), WrittenRates.row("x/a, d, day next year, 01-15").dayIn(2026));
    assertEquals(day("2020-02-29"), WrittenRates.row("x/a, d, date, 2020-02-29").dayIn(2026));
    Rate line = WrittenRates.row("x/a, d, line, 24b");
    assertThrows(IllegalStateException.class, line::amount);
    assertThrows(IllegalStateException.class, () -> WrittenRates.row("x/a, d, money, 5").factor());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "x/a, , money, 5",
        "x/a, d, money, ",
        "x/a, d, money, five",
        "x/a, d, money, -5",
        "x/a, d, day, 13-01",
        "x/a, d, day next year, 02-30",
        "x/a, d, date, 2026-13-01",
        "x/a, d, money, 5, , 2022-02-01, 2022-01-31",
        "x/a, d, money, 5, , 2022-02-01, 2022-02-28, "
      })
  void a_row_that_cannot_be_is_refused(String row) {
    assertThrows(IllegalArgumentException.class, () -> WrittenRates.row(row));
  }

  @ParameterizedTest
  @EnumSource(RateUnit.class)
  void every_unit_is_found_by_its_own_words(RateUnit unit) {
    assertEquals(
        Optional.of(unit), RateUnit.find(" " + unit.text().toUpperCase(java.util.Locale.ROOT)));
  }

  @Test
  void other_words_are_no_unit() {
    assertEquals(Optional.empty(), RateUnit.find("furlongs"));
    assertEquals(false, RateUnit.WORD.isNumeric());
    assertEquals(true, RateUnit.MONEY.isNumeric());
  }

  @ParameterizedTest
  @CsvSource({
    "Form 1040 (from memory), MEMORY, from memory, from memory",
    "Form 1040 (carried over), CARRIED_OVER, carried over, carried over from the last year seen",
    "common practice, PRACTICE, common practice, ''",
    "Notice (as reported by x), REPORTED, reported, ''",
    "Notice 2022-03, VERIFIED, verified, ''"
  })
  void a_source_tells_how_far_it_was_checked(
      String source, Standing standing, String word, String mark) {
    assertEquals(standing, Standing.of(source));
    assertEquals(word, standing.word());
    assertEquals(mark, InEnglish.said(standing.mark()));
  }

  @Test
  void a_citation_says_section_check_and_whose_file_it_is() {
    Rate own =
        new Rate(
            "x/a",
            "c",
            "C",
            "5",
            RateUnit.MONEY,
            day("2022-01-01"),
            day("2022-12-31"),
            "Act",
            "s. 3",
            Optional.of(day("2026-01-02")),
            true);
    assertEquals("Act, s. 3 (checked 2026-01-02), from your own rates file", own.citation());
    assertEquals("a test (not checked)", WrittenRates.row("x/a, c, money, 5").citation());
    assertEquals(
        List.of(own), new RateTables(List.of(new RateTable("x/a", List.of(own)))).overlaid());
  }
}

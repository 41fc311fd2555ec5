package clenchbook.reading;

import static clenchbook.reading.Told.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Material;
import clenchbook.book.Purchase;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.Unit;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.texts.InEnglish;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Units and currencies typed in cells, as far as the book's records. */
class UnitsInCellsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  @TempDir Path folder;

  private static SmallBook book() {
    return SmallBook.visits("Date|Owner|Horse|Work|Charge")
        .visit(DAY, "Ada", "Bramble", "Trim", 45);
  }

  private static Optional<BigDecimal> of(String value) {
    return Optional.of(new BigDecimal(value));
  }

  private static List<ProblemKind> kinds(ReadResult result) {
    return result.problems().stream().map(Problem::kind).toList();
  }

  /** 13 1/2 in became 13.5 mm, and a handmade set cost 0.26. */
  @Test
  void a_length_in_inches_under_millimetres_is_converted() {
    ReadResult result =
        book()
            .sheet("Materials", "Item|Kind|Length mm|Bar length mm")
            .row("Materials", "Concave", "handmade", "13 1/2 in", "10 ft")
            .row("Materials", "Plain", "handmade", "3 kg", "")
            .read(folder);
    Material first = result.book().materials().get(0);
    assertEquals(of("342.9"), first.lengthMm());
    assertEquals(of("3048"), first.barLengthMm());
    assertEquals(Optional.empty(), result.book().materials().get(1).lengthMm());
    assertEquals(List.of(ProblemKind.UNIT_OTHER), kinds(result));
    assertEquals("Materials!C3", result.problems().get(0).at().toString());
  }

  @Test
  void a_length_in_millimetres_under_inches_or_feet_is_exact() {
    ReadResult result =
        book()
            .sheet("Materials", "Item|Kind|Length in|Bar length ft")
            .row("Materials", "Concave", "handmade", "343 mm", "3 m")
            .row("Materials", "Plain", "handmade", "13 1/2", 10)
            .read(folder);
    assertEquals(of("343"), result.book().materials().get(0).lengthMm());
    assertEquals(of("3000"), result.book().materials().get(0).barLengthMm());
    assertEquals(
        0, new BigDecimal("342.9").compareTo(result.book().materials().get(1).lengthMm().get()));
    assertEquals(List.of(), result.problems());
  }

  @ParameterizedTest
  @CsvSource({"mile,6.2137119224", "km,10"})
  void a_distance_in_kilometres_is_converted_to_the_books_unit(String unit, String distance) {
    ReadResult result =
        book()
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Distance unit", unit)
            .sheet("Places", "Place|Distance")
            .row("Places", "Oak Yard", "10 km")
            .row("Places", "Elm Yard", new SmallBook.Styled("10", "0.0\" km\""))
            .row("Places", "Ash Yard", "10 m")
            .read(folder);
    assertEquals(of(distance), result.book().places().get(0).distance());
    assertEquals(of(distance), result.book().places().get(1).distance());
    assertEquals(Optional.empty(), result.book().places().get(2).distance());
    assertEquals(List.of(ProblemKind.UNIT_OTHER), kinds(result));
  }

  /** A column headed Miles in a book that never said so was taken for kilometres. */
  @Test
  void a_heading_that_names_another_unit_than_the_books_is_converted() {
    ReadResult result =
        book()
            .sheet("Places", "Place|Miles")
            .row("Places", "Oak Yard", 10)
            .row("Places", "Elm Yard", "10 km")
            .sheet("Trips", "Date|From|To|Distance (km)")
            .row("Trips", DAY, "Home", "Oak Yard", 10)
            .read(folder);
    assertEquals(of("16.09344"), result.book().places().get(0).distance());
    assertEquals(of("10"), result.book().places().get(1).distance());
    assertEquals(of("10"), result.book().trips().get(0).typedDistance());
  }

  @Test
  void quantities_bear_their_unit() {
    ReadResult result =
        book()
            .sheet("Purchases", "Date|Item|Quantity|Unit|Net")
            .row("Purchases", DAY, "Bar", "3 lb", "kg", 9)
            .row("Purchases", DAY, "Propane", "10 gal", "kg", 30)
            .row("Purchases", DAY, "Nails", "2 packs", "", 30)
            .row("Purchases", DAY, "Nails", "1.5 kg", "", 30)
            .row("Purchases", DAY, "Nails", "2 packs", "piece", 30)
            .read(folder);
    List<Purchase> bought = result.book().purchases();
    assertEquals(of("1.36077711"), bought.get(0).quantity());
    assertEquals(of("19.232316488"), bought.get(1).quantity());
    assertEquals(of("2"), bought.get(2).quantity());
    assertEquals(Unit.PACK, bought.get(2).unit());
    assertEquals(of("1.5"), bought.get(3).quantity());
    assertEquals(Unit.KG, bought.get(3).unit());
    assertEquals(Optional.empty(), bought.get(4).quantity());
    assertEquals(List.of(ProblemKind.UNIT_OTHER), kinds(result));
  }

  @Test
  void an_interval_in_days_is_weeks_and_one_in_months_counts_as_blank() {
    ReadResult result =
        book()
            .sheet("Horses", "Horse|Owner|Interval weeks")
            .row("Horses", "Bramble", "Ada", "42 days")
            .row("Horses", "Clover", "Ada", "2 months")
            .row("Horses", "Daisy", "Ada", "6 weeks")
            .read(folder);
    assertEquals(of("6"), result.book().horses().get(0).intervalWeeks());
    assertEquals(Optional.empty(), result.book().horses().get(1).intervalWeeks());
    assertEquals(of("6"), result.book().horses().get(2).intervalWeeks());
    assertEquals(List.of(ProblemKind.UNIT_OTHER), kinds(result));
  }

  @Test
  void settings_may_bear_their_units() {
    Settings settings =
        book()
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Currency", "GBP")
            .row("Settings", "Distance unit", "km")
            .row("Settings", "Terms days", "2 weeks")
            .row("Settings", "Forge setup min", "5 min")
            .row("Settings", "Vehicle cost per distance", "£0.45/mile")
            .row("Settings", "Gas cost per kg", "1.20 per lb")
            .row("Settings", "Gas burn kg per hour", "0.9 kg/h")
            .read(folder)
            .book()
            .settings();
    assertEquals("14", settings.text(Setting.TERMS_DAYS));
    assertEquals("5", settings.text(Setting.FORGE_SETUP_MIN));
    // 0.45 / 1.609344 and 1.20 / 0.45359237, reckoned by hand to ten decimals
    assertEquals("0.2796170365", settings.text(Setting.VEHICLE_COST));
    assertEquals("2.6455471462", settings.text(Setting.GAS_COST_KG));
    assertEquals("0.9", settings.text(Setting.GAS_BURN_KG));
  }

  // currencies

  @ParameterizedTest
  @ValueSource(strings = {"€85", "85 EUR", "$85.00"})
  void a_charge_under_another_currencys_sign_warns_and_counts(String charge) {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit(DAY, "Ada", "Bramble", "Trim", charge)
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Currency", "GBP")
            .read(folder);
    assertEquals(of("85"), result.book().visits().get(0).charge());
    assertEquals(List.of(ProblemKind.CURRENCY_OTHER), kinds(result));
    assertEquals(Severity.WARNING, result.problems().get(0).severity());
    assertTrue(InEnglish.said(result.problems().get(0).problem()).contains("GBP"));
  }

  @Test
  void a_number_formatted_in_another_currency_warns_too() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit(DAY, "Ada", "Bramble", "Trim", new SmallBook.Styled("85", "[$€-407]#,##0.00"))
            .visit(DAY, "Ada", "Clover", "Trim", new SmallBook.Styled("85", "\"£\"#,##0.00"))
            .visit(DAY, "Ada", "Daisy", "Trim", new SmallBook.Styled("85", "#,##0.00\\ \"kr\""))
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Currency", "GBP")
            .read(folder);
    assertEquals(
        List.of("Visits!E2", "Visits!E4"),
        result.problems().stream().map(problem -> problem.at().toString()).toList());
    assertEquals(List.of(ProblemKind.CURRENCY_OTHER, ProblemKind.CURRENCY_OTHER), kinds(result));
  }

  @Test
  void a_heading_that_names_another_currency_warns_once() {
    SmallBook book =
        SmallBook.visits("Date|Owner|Horse|Work|Price (£)|Paid")
            .visit(DAY, "Ann", "Bramble", "Trim", 45)
            .visit(DAY, "Ann", "Star", "Trim", 45)
            .sheet("Prices", "Work|Price EUR")
            .row("Prices", "Trim", 40);
    ReadResult result = book.read(folder, Locale.GERMANY);
    assertEquals("warning CURRENCY_OTHER Visits!E1\n", told(result));
    assertEquals(
        "the heading 'Price (£)' names £, but the book is in EUR; its amounts are read as EUR",
        InEnglish.said(result.problems().get(0).problem()));
    assertEquals("warning CURRENCY_OTHER Prices!B1\n", told(book.read(folder, Locale.UK)));
  }

  @Test
  void a_dollar_is_the_dollar_of_the_book() {
    SmallBook book =
        SmallBook.visits("Date|Owner|Horse|Work|Charge $|Paid (US$)")
            .visit(DAY, "Ann", "Bramble", "Trim", 45);
    assertEquals("warning CURRENCY_OTHER Visits!F1\n", told(book.read(folder, Locale.CANADA)));
    assertEquals("", told(book.read(folder, Locale.US)));
  }

  @Test
  void words_that_are_a_currencys_code_somewhere_name_none() {
    String headings = "Date|Owner|Horse|Work|Price (all in)|Notes (try cup top)";
    ReadResult result =
        SmallBook.visits(headings).visit(DAY, "Ann", "Bramble", "Trim", 45).read(folder);
    assertEquals("", told(result));
  }
}

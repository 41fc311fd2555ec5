package clenchbook.reading.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberTextTest {
  private static final NumberText POINT = new NumberText(Locale.UK);
  private static final NumberText COMMA = new NumberText(Locale.GERMANY);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "85 | 85",
        "85.50 | 85.5",
        "1,234.50 | 1234.5",
        "1,234 | 1234",
        "12,345,678 | 12345678",
        "1 234.50 | 1234.5",
        "1'234.50 | 1234.5",
        "-12.5 | -12.5",
        "(12.50) | -12.5",
        "12.5- | -12.5",
        "+7 | 7",
        "85.- | 85",
        ".5 | 0.5",
        "0.125 | 0.125",
        "1.234 | 1.234",
        "−3 | -3",
        "٤٥ | 45",
        "1,00,000 | 100000",
      })
  void a_point_is_the_decimal_mark_of_a_british_book(String text, BigDecimal value) {
    Optional<NumberText.Reading> read = POINT.read(text);
    assertEquals(Optional.of(value), read.map(NumberText.Reading::value));
    assertFalse(read.orElseThrow().otherMark());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "85,50 | 85.5",
        "1.234,50 | 1234.5",
        "1.234 | 1234",
        "1 234,5 | 1234.5",
        "0,125 | 0.125",
        "12.345.678 | 12345678",
        "85,- | 85",
      })
  void a_comma_is_the_decimal_mark_of_a_german_book(String text, BigDecimal value) {
    Optional<NumberText.Reading> read = COMMA.read(text);
    assertEquals(Optional.of(value), read.map(NumberText.Reading::value));
    assertFalse(read.orElseThrow().otherMark());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"85,50 | 85.5", "1.234,50 | 1234.5", "0,125 | 0.125"})
  void the_other_mark_is_read_where_there_is_only_one_reading_and_said(
      String text, BigDecimal value) {
    NumberText.Reading read = POINT.read(text).orElseThrow();
    assertEquals(value, read.value());
    assertTrue(read.otherMark());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "abc",
        "12abc",
        "1.2.3",
        "1,23,4",
        "12,34.56.7",
        "--5",
        "1e5",
        "NaN",
        ",",
        ".",
        "5 6",
        "1 2345",
        "99999999999999999999999999999999999999999999",
      })
  void anything_else_is_no_number(String text) {
    assertEquals(Optional.empty(), POINT.read(text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "£85.00 | 85",
        "85.00 GBP | 85",
        "£ 1,250 | 1250",
        "-£12.50 | -12.5",
        "(£12.50) | -12.5",
        "85 | 85",
        "GBP85 | 85",
        "£-5 | -5",
      })
  void money_may_bear_the_sign_of_the_books_currency(String text, BigDecimal value) {
    MoneyText money = new MoneyText(POINT, Optional.of("GBP"));
    assertEquals(Optional.of(value), money.read(text).map(NumberText.Reading::value));
  }

  @ParameterizedTest
  @ValueSource(strings = {"eighty", "yes", "85 or so", "£", "100 pcs", "85 min", "85 km"})
  void money_in_words_or_with_another_unit_is_not_read(String text) {
    MoneyText money = new MoneyText(POINT, Optional.of("GBP"));
    assertEquals(Optional.empty(), money.read(text));
  }

  @ParameterizedTest
  @CsvSource({"€85,€", "$85,$", "85 EUR,EUR", "CHF 85,CHF", "85 kr,kr", "-US$85,US$"})
  void money_under_another_currencys_sign_is_read_and_told_apart(String text, String sign) {
    MoneyText money = new MoneyText(POINT, Optional.of("GBP"));
    assertEquals(85, money.read(text).orElseThrow().value().abs().intValue());
    assertEquals(Optional.of(sign), money.foreign(text));
    assertEquals(Optional.empty(), new MoneyText(POINT, Optional.empty()).foreign(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"85", "£85", "85.00 GBP", "GBP 85", "(85)", "as agreed"})
  void the_books_own_sign_is_not_foreign(String text) {
    assertEquals(Optional.empty(), new MoneyText(POINT, Optional.of("GBP")).foreign(text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"1.234,50 € | 1234.5", "€ 85,- | 85", "85,00 EUR | 85"})
  void money_of_a_german_book(String text, BigDecimal value) {
    MoneyText money = new MoneyText(COMMA, Optional.of("EUR"));
    assertEquals(Optional.of(value), money.read(text).map(NumberText.Reading::value));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "45 | 45",
        "0:45 | 45",
        "1:05 | 65",
        "1:05:30 | 65.5",
        "45 min | 45",
        "45m | 45",
        "1h | 60",
        "1h30 | 90",
        "1 h 5 min | 65",
        "1.5 hours | 90",
        "45' | 45",
        "0:00 | 0",
        "90 s | 1.5",
        "1 uur | 60",
        "1,5 h | 90",
      })
  void minutes_may_be_a_clock_form_or_bear_their_unit(String text, BigDecimal value) {
    MinutesText minutes = new MinutesText(POINT);
    assertEquals(Optional.of(value), minutes.read(text).map(NumberText.Reading::value));
  }

  @ParameterizedTest
  @ValueSource(strings = {"about an hour", "1:75", "::", "1:2:3:4", "45 km", "half"})
  void other_words_are_no_length_of_time(String text) {
    assertEquals(Optional.empty(), new MinutesText(POINT).read(text));
  }
}

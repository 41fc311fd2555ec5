package clenchbook.print.invoice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.reports.letters.PrintLocale;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Expected forms: common practice of each country; digits per currency from ISO 4217, from memory.
 */
class PrintFormatsTest {
  private Locale machine = Locale.ROOT;

  @BeforeEach
  void the_machine_speaks_arabic() {
    machine = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
  }

  @AfterEach
  void the_machine_speaks_as_before() {
    Locale.setDefault(machine);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en|GB|GBP|1234.5|£1,234.50",
        "en|US|USD|-12|\u2212$12.00",
        "de|DE|EUR|1234.5|1.234,50~€",
        "fr|FR|EUR|1234.5|1_234,50~€",
        "es|ES|EUR|12345.5|12.345,50~€",
        "nl|NL|EUR|1234.5|€~1.234,50",
        "en|JP|JPY|1234.5|¥1,235",
        "en|BH|BHD|1.2345|BHD~1.235",
        "en|GB|CHF|5|CHF~5.00"
      })
  void money_is_written_as_the_country_writes_it(
      String language, String country, String currency, String value, String expected) {
    PrintFormats formats = new PrintFormats(new PrintLocale(language, country), currency);
    String plain = expected.replace('~', '\u00A0').replace('_', '\u202F');
    assertEquals(plain, formats.money(new BigDecimal(value)));
  }

  @Test
  void a_week_is_named_by_its_monday() {
    LocalDate sunday = LocalDate.of(2026, 11, 15);
    assertEquals("9\u00A0November", of("en", "GB").weekOf(sunday));
    assertEquals("November\u00A09", of("en", "US").weekOf(sunday));
    assertEquals("9\u00A0de\u00A0noviembre", of("es", "ES").weekOf(sunday));
  }

  @Test
  void an_unknown_language_is_written_in_latin_figures() {
    assertEquals("31 October 2026", of("ar", "GB").longDate(LocalDate.of(2026, 10, 31)));
  }

  private static PrintFormats of(String language, String country) {
    return new PrintFormats(new PrintLocale(language, country), "EUR");
  }
}

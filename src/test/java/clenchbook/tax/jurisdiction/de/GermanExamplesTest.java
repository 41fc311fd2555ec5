package clenchbook.tax.jurisdiction.de;

import static clenchbook.tax.Published.number;
import static clenchbook.tax.Published.rate;
import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.YearBook;
import clenchbook.tax.YearEndFindings;
import clenchbook.tax.year.StockValue;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published examples of German law, by their sources. */
class GermanExamplesTest {
  private static final MinorUnit CENT = MinorUnit.of("EUR");

  private static WrittenBook german() {
    return new WrittenBook()
        .setting(Setting.TAX_REGIME, "de")
        .setting(Setting.CURRENCY, "EUR")
        .setting(Setting.TAX_NUMBER, "000/000/00000")
        .setting(Setting.TAX_BASIS, "invoiced")
        .tax("Code: U, Name: USt, Rate %: 19, Kind: standard")
        .tax("Code: R, Name: USt, Rate %: 7, Kind: reduced")
        .work("Work: Set, Tax: U, Price: 1")
        .work("Work: Trim, Tax: R, Price: 1");
  }

  private static Optional<String> code(WrittenBook book, String code) {
    YearEndFindings findings = YearBook.end(book, List.of(), 2025, StockValue.NONE, Optional.of(1));
    return YearBook.amount(findings, code);
  }

  /** ieconomics.de, travel by private car: 312 km at 0.30 are 93.60. */
  @Test
  void kilometres_driven() {
    WrittenBook book =
        german().trip("Date: 2025-02-03, From: Home, To: Oak, Distance: 312, Purpose: round");
    YearEndFindings findings = YearBook.end(book, List.of(), 2025);
    assertEquals(Optional.of("93.60"), YearBook.amount(findings, "71"));
  }

  /**
   * Test of a public repository on the advance return: 2,900.00 at 19 % are 551.00; less 173.55 of
   * input tax, 377.45 are to pay.
   */
  @Test
  void an_advance_return_to_pay() {
    WrittenBook book =
        german()
            .visit("Date: 2025-01-10, Horse: Bess, Owner: Ash, Work: Set, Charge: 2900")
            .purchase("Date: 2025-01-15, Supplier: Depot, Item: keg, Net: 913.42, Tax: 173.55");
    assertEquals(Optional.of("2900.00"), code(book, "81"));
    assertEquals(Optional.of("173.55"), code(book, "66"));
    assertEquals(Optional.of("377.45"), code(book, "83"));
  }

  /** The same test: cents of the base are left off, never rounded; 100 at 7 % are 7.00. */
  @Test
  void bases_in_whole_euros() {
    WrittenBook book =
        german()
            .visit("Date: 2025-01-10, Horse: Bess, Owner: Ash, Work: Set, Charge: 2900.99")
            .visit("Date: 2025-01-11, Horse: Moss, Owner: Ash, Work: Trim, Charge: 100.50");
    assertEquals(Optional.of("2900.00"), code(book, "81"));
    assertEquals(Optional.of("100.00"), code(book, "86"));
    assertEquals(Optional.of("558.00"), code(book, "83"));
    assertEquals(number("7.00"), WholeEuros.tax(number("100.50"), number("7"), CENT));
  }

  /** The same test: no sales and 120.00 of input tax come back. */
  @Test
  void an_advance_return_to_get_back() {
    WrittenBook book =
        german().purchase("Date: 2025-01-15, Supplier: Depot, Item: keg, Net: 631.58, Tax: 120");
    assertEquals(Optional.of("0.00"), code(book, "81"));
    assertEquals(Optional.of("-120.00"), code(book, "83"));
  }

  /**
   * ionos.de, Lineare Abschreibung: a copier of 16,800 over seven years from October 2018: 600 in
   * the first year, 2,400 in each of six, 1,800 in the last.
   */
  @Test
  void straight_line_by_the_month() {
    StraightLine copier =
        new StraightLine(number("16800"), 84, LocalDate.of(2018, 10, 5), Optional.empty());
    BigDecimal before = BigDecimal.ZERO;
    int year = 2018;
    for (String expected :
        List.of("600", "2400", "2400", "2400", "2400", "2400", "2400", "1800", "0")) {
      BigDecimal now = copier.upTo(LocalDate.of(year, 12, 31), CENT);
      assertEquals(0, number(expected).compareTo(now.subtract(before)), "in " + year);
      before = now;
      year++;
    }
  }

  /**
   * steuern-leicht.de, Bewirtungskosten: 119 with tax and a tip to 125: 19 of input tax come back,
   * 70 % of the remaining 106 count: 74.20.
   */
  @Test
  void meals_with_clients() {
    WrittenBook book =
        german()
            .purchase(
                "Date: 2025-02-10, Supplier: Gasthof, Category: Bewirtung, Net: 106, Tax: 19");
    YearEndFindings findings = YearBook.end(book, List.of(), 2025);
    assertEquals(Optional.of("74.20"), YearBook.amount(findings, "63"));
    assertEquals(Optional.of("19.00"), YearBook.amount(findings, "57"));
  }

  /**
   * steuerberater-münchen.de, Grundwissen: geringwertige Wirtschaftsgüter: 800 is without tax, for
   * small businesses too; infoportal-buchhaltung.com: a pool goes by 20 % in each of five years.
   */
  @ParameterizedTest
  @CsvSource({
    "no list,2025-01-01,250",
    "low value,2018-01-01,800",
    "low value,2026-12-31,800",
    "pool,2025-01-01,1000",
    "pool years,2025-01-01,5"
  })
  void limits_of_low_value_assets(String code, String day, BigDecimal limit) {
    assertEquals(limit, rate("de/depreciation", code, day));
  }

  /** UStG § 19 (haufe.de); § 20 (aok.de); EStG § 4 Abs. 5 Nr. 1 (blitzbooks.de, emb-werte.com). */
  @ParameterizedTest
  @CsvSource({
    "de/turnover,limit before,2024-12-31,22000",
    "de/turnover,limit before,2025-01-31,25000",
    "de/turnover,limit current,2025-01-31,100000",
    "de/vat,receipts limit,2023-12-31,600000",
    "de/vat,receipts limit,2024-01-01,800000",
    "de/limits,gifts,2023-12-31,35",
    "de/limits,gifts,2024-01-01,50"
  })
  void limits_by_the_day(String table, String code, String day, BigDecimal limit) {
    assertEquals(limit, rate(table, code, day));
  }
}

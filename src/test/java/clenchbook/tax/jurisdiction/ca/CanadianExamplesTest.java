package clenchbook.tax.jurisdiction.ca;

import static clenchbook.tax.Published.number;
import static clenchbook.tax.Published.rate;
import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.YearBook;
import clenchbook.tax.YearEndFindings;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published examples of Canadian law, by their sources. */
class CanadianExamplesTest {
  private static final MinorUnit CENT = MinorUnit.of("CAD");

  private static WrittenBook canadian() {
    return new WrittenBook()
        .setting(Setting.TAX_REGIME, "ca")
        .setting(Setting.CURRENCY, "CAD")
        .setting(Setting.TAX_BASIS, "invoiced");
  }

  /**
   * canada.ca, Calculating motor vehicle expenses, Danielle: 27,000 of 30,000 km; licence 100, gas
   * 2,400, insurance 1,900, interest 800, maintenance 200 make 5,400, of which 4,860; parking 40
   * and extra business insurance 100 on top: 5,000.
   */
  @Test
  void a_vehicle_by_its_actual_cost() {
    WrittenBook book =
        canadian()
            .purchase("Date: 2026-01-05, Supplier: A, Category: Vehicle licence, Gross: 100")
            .purchase("Date: 2026-02-05, Supplier: B, Category: Truck fuel, Gross: 2400")
            .purchase("Date: 2026-03-05, Supplier: C, Category: Vehicle insurance, Gross: 1900")
            .purchase("Date: 2026-04-05, Supplier: D, Category: Truck loan interest, Gross: 800")
            .purchase("Date: 2026-05-05, Supplier: E, Category: Truck repairs, Gross: 200")
            .purchase("Date: 2026-06-05, Supplier: F, Category: Parking, Gross: 40")
            .purchase(
                "Date: 2026-07-05, Supplier: C, Category: Business vehicle insurance, Gross: 100")
            .trip("Date: 2026-01-05, From: Home, To: Oak, Distance: 27000, Purpose: rounds")
            .trip("Date: 2026-12-05, From: Home, To: Sea, Distance: 3000, Purpose: private");
    YearEndFindings findings = YearBook.end(book, List.of(), 2026);
    assertEquals(Optional.of("5000.00"), YearBook.amount(findings, "9281"));
    assertEquals(Optional.of("0.00"), YearBook.amount(findings, "8320"));
  }

  /**
   * kpu.pressbooks.pub, What is the purpose of the half-year rule: 25,000 in class 10: 3,750 in the
   * first year, 6,375 in the second, 14,875 left.
   */
  @Test
  void the_half_year_rule() {
    CcaYear first = year("0", "25000", "0", "0.3");
    assertEquals(number("3750.00"), first.claim());
    CcaYear second = year(first.closing().toPlainString(), "0", "0", "0.3");
    assertEquals(number("6375.00"), second.claim());
    assertEquals(0, number("14875").compareTo(second.closing()));
  }

  /**
   * A published answer on net additions (wxc.luwanzi.com, 2005): 500 at the start, 400 added, 200
   * disposed of, 20 %: half of the net 200 counts, 120 may be claimed, 580 are left.
   */
  @Test
  void only_net_additions_are_halved() {
    CcaYear year = year("500", "400", "200", "0.2");
    assertEquals(number("120.00"), year.claim());
    assertEquals(0, number("580").compareTo(year.closing()));
  }

  /** Form T2125, notes to Area A: below zero is recapture; left of an empty class is a loss. */
  @Test
  void recapture_and_terminal_loss() {
    CcaYear below =
        CcaYear.of(
            number("100"), number("0"), number("150"), number("0.3"), number("0.5"), true, CENT);
    assertEquals(0, number("50").compareTo(below.recapture()));
    CcaYear ended =
        CcaYear.of(
            number("100"), number("0"), number("60"), number("0.3"), number("0.5"), false, CENT);
    assertEquals(0, number("40").compareTo(ended.terminalLoss()));
    assertEquals(0, ended.closing().signum());
  }

  private static CcaYear year(String opening, String added, String disposed, String rate) {
    BigDecimal half = rate("ca/cca", "first year", "2017-12-31").movePointLeft(2);
    return CcaYear.of(
        number(opening), number(added), number(disposed), number(rate), half, true, CENT);
  }

  /**
   * Anderson v. The Queen, Tax Court of Canada (taxinterpretations.com): gross income 21,505 less
   * cost of goods 9,359 is a gross profit of 12,146.
   */
  @Test
  void gross_profit_is_income_less_goods() {
    WrittenBook book =
        canadian()
            .visit("Date: 2026-01-10, Horse: Bess, Owner: Ash, Work: Set, Charge: 21505")
            .purchase("Date: 2026-01-15, Supplier: Depot, Item: keg, Quantity: 9, Gross: 9359");
    YearEndFindings findings = YearBook.end(book, List.of(), 2026);
    assertEquals(Optional.of("21505.00"), YearBook.amount(findings, "8299"));
    assertEquals(Optional.of("9359.00"), YearBook.amount(findings, "8518"));
    assertEquals(Optional.of("12146.00"), YearBook.amount(findings, "8519"));
  }

  /**
   * pwc.com/ca, Tax Insights 2025-03: 15 % until 31 March 2025, 14 % after; avalara.com: others.
   */
  @ParameterizedTest
  @CsvSource({
    "ns,2025-03-31,15",
    "ns,2025-04-01,14",
    "on,2026-01-01,13",
    "nb,2026-01-01,15",
    "pe,2026-01-01,15",
    "ab,2026-01-01,5"
  })
  void rates_by_province_and_day(String province, String day, BigDecimal rate) {
    assertEquals(rate, rate("ca/gst", province, day));
  }

  /** First letters of Canadian postcodes, and names in both languages: from memory. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12 Lane, Truro, NS|NS",
        "12 Lane, Lakefield, Ontario|ON",
        "5 rang 2, Gatineau (Québec)  J8X 1A1|QC",
        "RR 2 Red Deer T4N 5E2|AB",
        "Hay River X0E 1G2|NT",
        "Nouveau-Brunswick|NB",
        "On the hill|"
      })
  void the_province_of_an_address(String address, String province) {
    assertEquals(Optional.ofNullable(province), Provinces.of(address));
  }
}

package clenchbook.tax.jurisdiction.uk;

import static clenchbook.tax.YearBook.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.YearBook;
import clenchbook.tax.YearEndFindings;
import clenchbook.tax.rates.RateLookup;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the United Kingdom's summary says, against published rules and worked figures. */
class UkYearTest {

  private static WrittenBook uk() {
    return new WrittenBook()
        .setting(Setting.TAX_REGIME, "uk")
        .setting(Setting.DISTANCE_UNIT, "mile");
  }

  /** ITTOIA 2005 s.45 and s.47; HMRC BIM45065 and BIM45070. */
  @Test
  void gifts_and_entertaining_are_listed_and_never_counted() {
    WrittenBook book =
        uk().purchase("Date: 2025-12-01, Supplier: Basket Shop, Category: Client gifts, Gross: 90")
            .purchase("Date: 2025-12-02, Supplier: Inn, Category: Entertaining, Gross: 40");
    YearEndFindings findings = YearBook.end(book, List.of(), 2025);
    assertEquals(Optional.of("90.00"), YearBook.amount(findings, "not counted: client gifts"));
    assertEquals(Optional.of("40.00"), YearBook.amount(findings, "not counted: entertainment"));
    assertEquals(Optional.empty(), YearBook.amount(findings, "24"));
    assertEquals(Optional.of("0.00"), YearBook.amount(findings, "31"));
    assertTrue(says(findings, "no more than 50 pounds a person"));
  }

  /** Common practice, no source: hire of tools is no cost of the vehicle. */
  @Test
  void hire_of_tools_stands_with_other_expenses_and_hire_of_a_van_with_travel() {
    WrittenBook book =
        uk().purchase("Date: 2025-12-01, Supplier: Hirer, Category: Tool hire, Gross: 30")
            .purchase("Date: 2025-12-02, Supplier: Hirer, Category: Equipment hire, Gross: 12")
            .purchase("Date: 2025-12-03, Supplier: Hirer, Category: Vehicle hire, Gross: 70");
    YearEndFindings findings = YearBook.end(book, List.of(), 2025);
    assertEquals(Optional.of("42.00"), YearBook.amount(findings, "30"));
    assertEquals(Optional.of("70.00"), YearBook.amount(findings, "20"));
  }

  /** gov.uk, Simplified expenses: vehicles; s.94E(2) and s.94F ITTOIA 2005 (as reported). */
  @Test
  void the_vehicles_note_is_the_rule_at_home() {
    WrittenBook book = uk().trip("Date: 2026-05-01, From: Home, To: Oak, Distance: 10");
    YearEndFindings findings = YearBook.end(book, List.of(), 2026);
    assertTrue(says(findings, "capital allowances were ever claimed"));
    assertTrue(says(findings, "it is kept for that vehicle"));
    assertTrue(says(findings, "rose to 55p"));
    assertTrue(says(findings, "45p is kept here, unconfirmed"));
    assertTrue(
        YearBook.notes(findings).stream()
            .noneMatch(note -> note.contains("first year") || note.contains("4797")));
    WrittenBook before = uk().trip("Date: 2025-05-01, From: Home, To: Oak, Distance: 10");
    assertTrue(!says(YearBook.end(before, List.of(), 2025), "55p"));
  }

  /** salarytax.uk, 2026-27: 30,000 gives 1,046 and 75,000 gives 2,757, printed in whole pounds. */
  @ParameterizedTest
  @CsvSource({"30000,1045.80,1046", "75000,2756.60,2757", "12570,0.00,0", "-10,0.00,0"})
  void class_4_as_published(BigDecimal profit, BigDecimal want, BigDecimal published) {
    RateLookup rates = new RateLookup(RateFiles.bundled());
    BigDecimal found =
        NationalInsurance.of(profit, LocalDate.of(2027, 4, 5), rates, new MinorUnit(2))
            .orElseThrow()
            .amount();
    assertEquals(want, found);
    assertEquals(0, published.compareTo(found.setScale(0, java.math.RoundingMode.HALF_UP)));
  }

  @Test
  void class_4_stands_beside_the_profit_as_an_estimate_and_in_no_total() {
    WrittenBook book = uk().payment("Date: 2026-05-01, Owner: Ash, Amount: 30000");
    YearEndFindings findings = YearBook.end(book, List.of(), 2026);
    assertEquals(Optional.of("1045.80"), YearBook.amount(findings, "Class 4"));
    assertEquals(Optional.of("30000.00"), YearBook.amount(findings, "47"));
    assertTrue(says(findings, "Class 2 is voluntary below a profit of 7105"));
  }

  /** gov.uk, Understand your Self Assessment tax bill (as reported). */
  @Test
  void payments_on_account_have_their_days() {
    YearEndFindings findings =
        YearBook.end(uk().payment("Date: 2025-05-01, Owner: Ash, Amount: 1"), List.of(), 2025);
    assertEquals(
        List.of("2026-01-31", "2026-07-31", "2027-01-31"),
        YearBook.table(findings, "payments-on-account").rows().stream()
            .map(row -> row.get(1))
            .toList());
  }

  /**
   * Income Tax Act 2007 s.4: 5 April ends the year. Work of 2 April stands on the invoice of 30
   * April, so by the bill it is income of the next year, with the month's other work; by the money
   * it is income of the day on which it was paid.
   */
  @Test
  void work_of_the_first_five_days_of_april_goes_by_the_bill_or_by_the_money() {
    for (String basis : List.of("invoiced", "cash")) {
      WrittenBook book =
          uk().setting(Setting.TAX_BASIS, basis)
              .visit("Date: 2026-03-20, Horse: A, Owner: Ash, Work: Set, Charge: 70")
              .visit("Date: 2026-04-02, Horse: A, Owner: Ash, Work: Set, Charge: 100")
              .visit("Date: 2026-04-20, Horse: A, Owner: Ash, Work: Set, Charge: 40")
              .payment("Date: 2026-04-03, Owner: Ash, Amount: 170");
      List<BilledDocument> march = YearBook.run(book, List.of(), "2026-03");
      List<BilledDocument> april = YearBook.run(book, march, "2026-04");
      String first = basis.equals("cash") ? "170.00" : "70.00";
      String second = basis.equals("cash") ? "0.00" : "140.00";
      assertEquals(first, turnover(book, march, 2025), basis + " before April is run");
      assertEquals(first, turnover(book, april, 2025), basis + " after it");
      assertEquals(second, turnover(book, april, 2026), basis + " in the next year");
    }
  }

  private static String turnover(WrittenBook book, List<BilledDocument> register, int year) {
    return YearBook.amount(YearBook.end(book, register, year), "15").orElse("0.00");
  }

  /** A word for a cost does not expire, though the rates of 2031 are not known. */
  @Test
  void words_hold_in_a_year_beyond_every_table() {
    WrittenBook book =
        uk().purchase("Date: 2031-12-01, Supplier: Ink Shop, Category: Stationery, Gross: 12")
            .asset("Asset: Anvil, Bought: 2031-12-02, Cost: 100, Class: anvil");
    YearEndFindings findings = YearBook.end(book, List.of(), 2031);
    assertEquals(Optional.empty(), YearBook.amount(findings, "unmapped"));
    assertEquals(Optional.of("12.00"), YearBook.amount(findings, "office"));
    assertTrue(
        YearBook.errors(findings).stream()
            .noneMatch(error -> error.contains("categories") || error.contains("asset-classes")),
        YearBook.errors(findings).toString());
  }
}

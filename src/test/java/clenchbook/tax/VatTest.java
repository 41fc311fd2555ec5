package clenchbook.tax;

import static clenchbook.tax.YearBook.table;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.sales.VatPeriod;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VatTest {

  private static WrittenBook registered() {
    return new WrittenBook()
        .setting(Setting.TAX_REGIME, "uk")
        .setting(Setting.TAX_NUMBER, "GB123456789")
        .tax("Code: S, Name: Standard, Rate %: 20, Kind: standard")
        .work("Work: Set, Tax: S, Price: 100");
  }

  private static String box(YearEndFindings findings, String scheme, String box) {
    return table(findings, "vat").rows().stream()
        .filter(row -> row.get(2).startsWith(scheme) && row.get(3).equals(box))
        .map(row -> row.get(5))
        .findFirst()
        .orElseThrow();
  }

  /**
   * VAT at 20 % on three lines of 1.13: 0.68 for the invoice as a whole, 0.69 line by line
   * (arithmetic).
   */
  @ParameterizedTest
  @CsvSource({"invoice,0.68", "line,0.69"})
  void tax_is_rounded_where_the_setting_says(String level, String tax) {
    WrittenBook book = registered().setting(Setting.TAX_ON, level);
    for (String horse : List.of("Bess", "Duke", "Moss")) {
      book.visit("Date: 2026-01-05, Horse: " + horse + ", Owner: Ash, Work: Set, Charge: 1.13");
    }
    YearEndFindings findings = YearBook.end(book, YearBook.run(book, List.of(), "2026-01"), 2025);
    assertEquals(tax, box(findings, "standard", "1"));
  }

  /** By hand: sales 1,000 net and 200 tax, purchases 300 net and 60 tax; flat rates on 1,200. */
  @Test
  void the_boxes_on_the_standard_method_and_at_both_flat_rates() {
    WrittenBook book =
        registered()
            .visit("Date: 2026-01-05, Horse: Bess, Owner: Ash, Work: Set, Charge: 1000")
            .purchase(
                "Date: 2026-02-01, Supplier: Forge Supply, Item: keg, Quantity: 1, Net: 300, Tax:"
                    + " 60");
    YearEndFindings findings = YearBook.end(book, YearBook.run(book, List.of(), "2026-01"), 2025);
    assertEquals("200.00", box(findings, "standard", "1"));
    assertEquals("60.00", box(findings, "standard", "4"));
    assertEquals("140.00", box(findings, "standard", "5"));
    assertEquals("1000", box(findings, "standard", "6"));
    assertEquals("300", box(findings, "standard", "7"));
    assertEquals("144.00", box(findings, "flat rate 12 %", "5"));
    assertEquals("198.00", box(findings, "flat rate 16.5 %", "5"));
    assertEquals("1200", box(findings, "flat rate 12 %", "6"));
  }

  @Test
  void a_flat_rate_rounds_half_up_to_the_penny() {
    Period period = new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 3, 31));
    VatPeriod vat =
        new VatPeriod(
            period,
            new BigDecimal("10.00"),
            new BigDecimal("2.05"),
            BigDecimal.ZERO,
            BigDecimal.ZERO);
    assertEquals(new BigDecimal("1.45"), vat.flatRateTax(new BigDecimal("0.12"), new MinorUnit(2)));
  }

  @Test
  void without_a_tax_number_no_vat_is_charged_and_the_threshold_is_watched() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "uk")
            .visit("Date: 2025-05-05, Horse: Bess, Owner: Ash, Work: Set, Charge: 50000")
            .visit("Date: 2026-03-05, Horse: Bess, Owner: Ash, Work: Set, Charge: 40000")
            .visit("Date: 2026-03-06, Horse: Bess, Owner: Ash, Work: Set, Charge: 0.01");
    YearEndFindings findings = YearBook.end(book, List.of(), 2025);
    List<List<String>> months = table(findings, "turnover").rows();
    assertEquals(
        List.of("2026-02", "50000.00", "90000", "no", "no"), months.get(months.size() - 2));
    assertEquals(
        List.of("2026-03", "90000.01", "90000", "yes", "no"), months.get(months.size() - 1));
    assertTrue(
        YearBook.notes(findings).stream()
            .anyMatch(
                note ->
                    note.startsWith("VAT registration")
                        && note.contains("90000 used, 100.0 %")
                        && note.contains("passed at the end of 2026-03")));
    assertTrue(findings.figures().stream().noneMatch(table -> table.name().equals("vat")));
  }

  /**
   * VAT Notice 700 as reported: turnover falls out of the twelve months after a year; 85,000 until
   * 31 March 2024.
   */
  @Test
  void the_threshold_is_the_one_of_the_months_end() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "uk")
            .visit("Date: 2023-05-05, Horse: Bess, Owner: Ash, Work: Set, Charge: 86000");
    List<List<String>> months = table(YearBook.end(book, List.of(), 2023), "turnover").rows();
    assertEquals(List.of("2023-05", "86000.00", "85000", "yes", "no"), months.get(1));
    List<List<String>> next = table(YearBook.end(book, List.of(), 2024), "turnover").rows();
    assertEquals(List.of("2024-04", "86000.00", "90000", "no", "yes"), next.get(0));
    assertEquals(List.of("2024-05", "0", "90000", "no", "yes"), next.get(1));
  }

  /** Practitioners' guides of June 2026 (as reported): due 7 August, November, February, May. */
  @Test
  void quarterly_updates_add_up_from_the_years_first_day() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "uk")
            .payment("Date: 2026-07-05, Owner: Ash, Amount: 10")
            .payment("Date: 2026-07-06, Owner: Ash, Amount: 5");
    YearEndFindings findings = YearBook.end(book, List.of(), 2026);
    List<List<String>> turnover =
        table(findings, "quarterly-updates").rows().stream()
            .filter(row -> row.get(4).equals("15"))
            .toList();
    assertEquals(
        List.of("1", "2026-04-06", "2026-07-05", "2026-08-07", "15", "Turnover", "10.00"),
        turnover.get(0));
    assertEquals("15.00", turnover.get(1).get(6));
    assertEquals("2027-05-07", turnover.get(3).get(3));
    assertEquals(Optional.of("15.00"), YearBook.amount(findings, "15"));
  }

  /** The duty began on 6 April 2026 (SI 2026/336, as reported): the year before has no due day. */
  @Test
  void no_update_is_due_before_the_duty_began_and_its_thresholds_are_named() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "uk")
            .payment("Date: 2025-07-05, Owner: Ash, Amount: 10");
    YearEndFindings findings = YearBook.end(book, List.of(), 2025);
    assertTrue(
        findings.figures().stream().noneMatch(table -> table.name().equals("quarterly-updates")));
    assertTrue(table(findings, "quarters").rows().stream().allMatch(row -> row.get(3).isEmpty()));
    String note =
        YearBook.notes(findings).stream()
            .filter(one -> one.startsWith("Quarterly"))
            .findFirst()
            .get();
    for (String part :
        List.of("50000", "30000", "20000", "2026-04-06", "2027-04-06", "not begun")) {
      assertTrue(note.contains(part), note);
    }
  }
}

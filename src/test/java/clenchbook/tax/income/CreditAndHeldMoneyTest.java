package clenchbook.tax.income;

import static clenchbook.tax.income.WrittenBill.creditNote;
import static clenchbook.tax.income.WrittenBill.invoice;
import static clenchbook.tax.income.WrittenBill.line;
import static clenchbook.tax.income.WrittenBill.payment;
import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.tax.billed.Billed;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Credit notes and money on account from year to year, by hand from the stated rules (common
 * practice, no source). Bills ask for 100.00 and 20.00 of tax; a credit note takes half of it away.
 */
class CreditAndHeldMoneyTest {
  private static Billed bill(String workDay, String day) {
    return invoice("1", day, line(2, workDay, "100.00", "20.00"));
  }

  private static Billed note(String day) {
    return creditNote("2", day, line(2, day, "-50.00", "-10.00"));
  }

  private static ReceiptTax tax(Receipt receipt, Billed... billed) {
    return ReceiptTax.of(List.of(receipt), List.of(billed), LocalDate::getYear, new MinorUnit(2));
  }

  /** 120 for a bill that asks for 60 now: 10 is tax, 60 are paid too much. */
  private static void assertHalfIsLeftOver(ReceiptTax tax, Receipt paid) {
    assertEquals(new BigDecimal("10.00"), tax.taxOf(paid));
    assertEquals(0, new BigDecimal("60").compareTo(tax.unmatched(paid)));
  }

  @Test
  void what_a_credit_note_takes_off_a_bill_is_no_longer_asked_for() {
    Receipt paid = payment(2, "2026-04-10", "120");
    assertHalfIsLeftOver(tax(paid, bill("2026-03-02", "2026-03-31"), note("2026-04-01")), paid);
  }

  @Test
  void a_credit_note_of_a_year_without_bill_or_money_counts() {
    Receipt paid = payment(2, "2027-04-10", "120");
    assertHalfIsLeftOver(tax(paid, bill("2025-03-02", "2025-03-31"), note("2026-04-01")), paid);
  }

  @Test
  void what_a_credit_note_leaves_over_lowers_the_next_years_bill() {
    Receipt paid = payment(2, "2026-04-10", "120");
    assertHalfIsLeftOver(tax(paid, note("2025-12-31"), bill("2026-03-02", "2026-03-31")), paid);
  }

  /** The work of 2025 is paid in 2025 out of what was held, before the note of 2026. */
  @Test
  void money_on_account_pays_the_work_of_its_year_before_a_credit_note_of_a_later_one() {
    Receipt paid = payment(2, "2024-12-20", "120");
    ReceiptTax tax = tax(paid, bill("2025-12-30", "2026-01-31"), note("2026-01-31"));
    assertEquals(
        List.of("2025-12-30 20.00"),
        tax.heldTaxes().stream().map(held -> held.day() + " " + held.tax()).toList());
  }

  @Test
  void money_on_account_that_pays_work_without_tax_gives_up_no_tax() {
    Receipt paid = payment(2, "2025-12-20", "50");
    Billed untaxed = invoice("1", "2026-03-31", line(2, "2026-03-02", "50.00", "0.00"));
    ReceiptTax tax = tax(paid, untaxed);
    assertEquals(List.of(), tax.heldTaxes());
    assertEquals(0, new BigDecimal("50").compareTo(tax.unmatched(paid)));
  }
}

package clenchbook.billing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.jobs.WrittenBook;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/** What an invoice shows as paid at the truck, added up on paper (common practice, no source). */
class PrepaidTest {
  private static final String TRIM = "Horse: Bess, Owner: Ruth, Work: Trim, Charge: ";

  private static BigDecimal prepaid(WrittenBook book, Ledger ledger, String number) {
    return new Prepaid(book.jobs(), ledger.last().documents()).of(ledger.document(number));
  }

  @Test
  void the_money_of_all_visits_on_the_invoice_is_added_and_no_other() {
    WrittenBook book =
        new WrittenBook()
            .visit("Date: 2026-10-05, Paid: 20, " + TRIM + "40")
            .visit("Date: 2026-10-12, " + TRIM + "40")
            .visit("Date: 2026-10-19, Paid: 5.50, " + TRIM + "40")
            .visit("Date: 2026-11-02, Paid: 40, " + TRIM + "40")
            .visit("Date: 2026-10-05, Paid: 7, Horse: Jet, Owner: Adam, Work: Trim");
    Ledger ledger = new Ledger().run(book, "2026-10");
    assertEquals(new BigDecimal("7.00"), prepaid(book, ledger, "2026-0001"));
    assertEquals(new BigDecimal("25.50"), prepaid(book, ledger, "2026-0002"));
  }

  @Test
  void a_visit_of_two_lines_was_paid_once() {
    WrittenBook book =
        new WrittenBook()
            .work("Work: Full set, Price: 100")
            .material("Item: pads, Kind: pad, Price: 10")
            .visit(
                "Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Full set, Charge: list,"
                    + " Extras: pads:2, Paid: 30");
    Ledger ledger = new Ledger().run(book, "2026-10");
    assertEquals(2, ledger.document("2026-0001").lines().size());
    assertEquals(new BigDecimal("30.00"), prepaid(book, ledger, "2026-0001"));
  }

  @Test
  void each_sharer_has_paid_a_share() {
    WrittenBook book =
        new WrittenBook()
            .horse("Horse: Bess, Owner: Ruth, Share %: 75")
            .horse("Horse: Bess, Owner: Adam, Share %: 25")
            .visit("Date: 2026-10-05, Horse: Bess, Work: Trim, Paid: 20");
    Ledger ledger = new Ledger().run(book, "2026-10");
    assertEquals(new BigDecimal("5.00"), prepaid(book, ledger, "2026-0001"));
    assertEquals(new BigDecimal("15.00"), prepaid(book, ledger, "2026-0002"));
  }

  /** The credit note gives the whole 40 back, so that the 20 still stand against the first bill. */
  @Test
  void an_invoice_that_bears_a_visit_anew_does_not_take_its_money_again() {
    WrittenBook before = new WrittenBook().visit("Date: 2026-10-05, Paid: 20, " + TRIM + "40");
    WrittenBook after = new WrittenBook().visit("Date: 2026-10-05, Paid: 20, " + TRIM + "35");
    Ledger ledger = new Ledger().run(before, "2026-10").sendMonth("2026-10");
    ledger.run(after, "2026-11");
    assertEquals(new BigDecimal("20.00"), prepaid(after, ledger, "2026-0001"));
    assertEquals(new BigDecimal("0.00"), prepaid(after, ledger, "2026-0002"), "the new invoice");
    assertEquals(new BigDecimal("0.00"), prepaid(after, ledger, "2026-0003"), "the credit note");
  }

  @Test
  void a_void_document_takes_no_money() {
    WrittenBook book = new WrittenBook().visit("Date: 2026-10-05, Paid: 20, " + TRIM + "40");
    Ledger ledger = new Ledger().run(book, "2026-10").voiding("2026-0001");
    assertEquals(
        new BigDecimal("0.00"),
        new Prepaid(book.jobs(), ledger.documentList()).of(ledger.document("2026-0001")));
  }
}

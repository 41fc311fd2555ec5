package clenchbook.billing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.jobs.WrittenBook;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Which drafts are out because a payment names one. The rule is the program's own: no part of a
 * visit may stay a draft while another part of it is out.
 */
class NamedByPaymentsTest {
  private static final String PAID = "Date: 2026-11-03, Owner: Ruth, Amount: 10, Invoice: ";

  private static Ledger paid(WrittenBook book, String number) {
    Ledger ledger = new Ledger().run(book, "2026-10");
    return ledger.run(book.payment(PAID + number), "2026-10");
  }

  private static WrittenBook three() {
    return new WrittenBook()
        .horse("Horse: Bess, Owner: Ruth, Share %: 50")
        .horse("Horse: Bess, Owner: Adam, Share %: 50")
        .horse("Horse: Jet, Owner: Adam, Share %: 50")
        .horse("Horse: Jet, Owner: Zoe, Share %: 50")
        .visit("Date: 2026-10-05, Horse: Bess, Work: Trim, Charge: 40")
        .visit("Date: 2026-10-06, Horse: Jet, Work: Trim, Charge: 60");
  }

  @Test
  void only_what_shares_a_visit_goes_with_the_named_draft() {
    WrittenBook book =
        new WrittenBook()
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth")
            .visit("Date: 2026-10-06, Horse: Jet, Owner: Adam");
    assertEquals(
        List.of("2026-0001 Adam 50.00 draft", "2026-0002 Ruth 50.00 issued"),
        paid(book, "2026-0002").documents());
  }

  /** Adam's invoice goes with Ruth's; Zoe's shares a visit with Adam's alone and stays. */
  @Test
  void it_does_not_spread_over_the_other_owners_of_other_horses() {
    assertEquals(
        List.of(
            "2026-0001 Adam 50.00 issued",
            "2026-0002 Ruth 20.00 issued",
            "2026-0003 Zoe 30.00 draft"),
        paid(three(), "2026-0002").documents());
  }

  @Test
  void a_payment_that_names_nothing_issues_nothing() {
    WrittenBook book = three();
    Ledger ledger = new Ledger().run(book, "2026-10");
    ledger.run(book.payment("Date: 2026-11-03, Owner: Ruth, Amount: 10"), "2026-10");
    assertEquals(0, ledger.issued().size());
  }

  @Test
  void a_draft_of_another_month_stays_one() {
    WrittenBook book =
        new WrittenBook()
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth")
            .visit("Date: 2026-11-05, Horse: Bess, Owner: Ruth");
    Ledger ledger = new Ledger().run(book, "2026-10").run(book, "2026-11");
    ledger.run(book.payment(PAID + "2026-0001"), "2026-11");
    assertEquals(
        List.of("2026-0001 Ruth 50.00 issued", "2026-0002 Ruth 50.00 draft"), ledger.documents());
  }

  /** Ruth's payment brings Adam's invoice, and that the credit note of Adam's other horse. */
  @Test
  void with_an_invoice_goes_the_credit_note_of_every_visit_that_it_bills_anew() {
    WrittenBook before =
        new WrittenBook()
            .horse("Horse: Jet, Owner: Adam")
            .visit("Date: 2026-10-06, Horse: Jet, Work: Trim, Charge: 60");
    Ledger ledger = new Ledger().run(before, "2026-10").sendMonth("2026-10");
    WrittenBook now =
        new WrittenBook()
            .horse("Horse: Jet, Owner: Adam")
            .horse("Horse: Bess, Owner: Ruth, Share %: 50")
            .horse("Horse: Bess, Owner: Adam, Share %: 50")
            .visit("Date: 2026-10-06, Horse: Jet, Work: Trim, Charge: 65")
            .visit("Date: 2026-11-05, Horse: Bess, Work: Trim, Charge: 40");
    ledger.run(now, "2026-11");
    assertEquals(
        List.of(
            "2026-0001 Adam 60.00 issued",
            "2026-0002 Adam 85.00 draft",
            "2026-0003 Ruth 20.00 draft",
            "2026-0004 Adam -60.00 draft"),
        ledger.documents());
    ledger.run(now.payment(PAID + "2026-0003"), "2026-11");
    assertEquals(4, ledger.issued().size());
  }
}

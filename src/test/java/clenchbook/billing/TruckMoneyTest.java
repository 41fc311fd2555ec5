package clenchbook.billing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import java.math.BigDecimal;
import java.time.YearMonth;
import org.junit.jupiter.api.Test;

/**
 * "Paid: yes" by hand (common practice, no source): what the invoice asks is what was handed over.
 */
class TruckMoneyTest {
  private static final YearMonth OCTOBER = YearMonth.of(2026, 10);

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.CURRENCY, "GBP")
        .work("Work: Trim, Price: 40")
        .work("Work: Set, Price: 85.03, Tax: V");
  }

  private static BigDecimal paid(WrittenBook book, String owner) {
    return new Ledger().run(book, "2026-10").account(owner, OCTOBER).paid();
  }

  private static BigDecimal balance(WrittenBook book, String owner) {
    return new Ledger().run(book, "2026-10").account(owner, OCTOBER).balance();
  }

  @Test
  void paid_in_full_is_the_list_price_or_the_charge() {
    WrittenBook book =
        book()
            .visit(
                "Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Paid: yes, Charge: list")
            .visit("Date: 2026-10-06, Horse: Bob, Owner: Ruth, Work: Trim, Charge: 55, Paid: yes")
            .visit("Date: 2026-10-07, Horse: Bea, Owner: Ruth, Work: Trim, Charge: list");
    assertEquals(new BigDecimal("95.00"), paid(book, "Ruth"));
    assertEquals(new BigDecimal("40.00"), balance(book, "Ruth"));
  }

  @Test
  void tax_on_top_is_handed_over_too_to_the_cent_of_the_invoice() {
    // Two of 85.03 with 20 %: 170.06 and 34.01; each by itself would be 17.01, and 34.02 together.
    WrittenBook book =
        book()
            .tax("Code: V, Rate %: 20")
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Set, Paid: yes, Charge: list")
            .visit("Date: 2026-10-06, Horse: Bob, Owner: Ruth, Work: Set, Paid: yes, Charge: list");
    assertEquals(new BigDecimal("204.07"), paid(book, "Ruth"));
    assertEquals(new BigDecimal("0.00"), balance(book, "Ruth"));
  }

  @Test
  void sharers_each_hand_over_their_own_part_discount_and_all() {
    WrittenBook book =
        book()
            .owner("Owner: Ruth, Discount %: 10")
            .owner("Owner: Sam")
            .horse("Horse: Bess, Owner: Ruth, Share %: 50")
            .horse("Horse: Bess, Owner: Sam, Share %: 50")
            .visit("Date: 2026-10-05, Horse: Bess, Work: Trim, Paid: yes, Charge: list");
    assertEquals(new BigDecimal("18.00"), paid(book, "Ruth"));
    assertEquals(new BigDecimal("20.00"), paid(book, "Sam"));
  }

  @Test
  void a_named_sharer_settles_their_own_part_only() {
    WrittenBook book =
        book()
            .owner("Owner: Ruth")
            .owner("Owner: Sam")
            .horse("Horse: Bess, Owner: Ruth, Share %: 50")
            .horse("Horse: Bess, Owner: Sam, Share %: 50")
            .visit(
                "Date: 2026-10-05, Horse: Bess, Owner: Sam, Work: Trim, Paid: yes, Charge: list");
    assertEquals(new BigDecimal("20.00"), paid(book, "Sam"));
    assertEquals(new BigDecimal("20.00"), balance(book, "Ruth"));
  }

  @Test
  void a_price_changed_after_the_invoice_went_out_leaves_it_paid() {
    WrittenBook sent =
        new WrittenBook()
            .setting(Setting.CURRENCY, "GBP")
            .work("Work: Trim, Price: 40")
            .visit(
                "Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Paid: yes, Charge: list");
    WrittenBook dearer =
        new WrittenBook()
            .setting(Setting.CURRENCY, "GBP")
            .work("Work: Trim, Price: 50")
            .visit(
                "Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Paid: yes, Charge: list");
    Ledger ledger = new Ledger().run(sent, "2026-10").send("2026-0001").run(dearer, "2026-10");
    assertEquals(new BigDecimal("40.00"), ledger.account("Ruth", OCTOBER).paid());
    assertEquals(new BigDecimal("0.00"), ledger.account("Ruth", OCTOBER).balance());
  }
}

package clenchbook.billing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.accounts.PaidState;
import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Balances and ageing worked by hand from the stated rules (common practice, no source). */
class AccountsTest {
  private static final YearMonth SEPTEMBER = YearMonth.of(2026, 9);
  private static final YearMonth OCTOBER = YearMonth.of(2026, 10);
  private static final YearMonth DECEMBER = YearMonth.of(2026, 12);

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.CURRENCY, "GBP")
        .setting(Setting.TERMS_DAYS, "14")
        .owner("Owner: Ruth, Opening balance: 30")
        .visit("Date: 2026-09-07, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 40")
        .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 50, Paid: 20");
  }

  private static Ledger ledger(WrittenBook book) {
    return new Ledger().run(book, "2026-09").run(book, "2026-10");
  }

  @Test
  void brought_forward_and_invoiced_less_paid_is_the_balance() {
    Account account = ledger(book()).account("Ruth", OCTOBER);
    assertEquals(new BigDecimal("70.00"), account.broughtForward());
    assertEquals(new BigDecimal("50.00"), account.invoiced());
    assertEquals(new BigDecimal("20.00"), account.paid());
    assertEquals(new BigDecimal("100.00"), account.balance());
  }

  @Test
  void ageing_counts_days_past_due_at_the_months_end() {
    // Opening balance due 1 September: 60 days past on 31 October. September's invoice, due 14
    // October: 17 days. October's, due 14 November: not yet, and 20 of it paid at the truck.
    assertEquals("30.00 40.00 30.00 0.00", Ledger.ages(ledger(book()).account("Ruth", OCTOBER)));
  }

  @Test
  void a_payment_goes_to_the_invoice_it_names_and_the_rest_to_the_oldest() {
    WrittenBook paid =
        book().payment("Date: 2026-10-20, Owner: Ruth, Amount: 60, Invoice: 2026-0002");
    // October's 50 has 20 from the truck, so 30 of the 60 close it; 30 close the opening balance.
    assertEquals("0.00 40.00 0.00 0.00", Ledger.ages(ledger(paid).account("Ruth", OCTOBER)));
  }

  @Test
  void what_is_paid_too_much_stands_as_credit_in_current() {
    WrittenBook paid = book().payment("Date: 2026-10-20, Owner: Ruth, Amount: 110");
    Account account = ledger(paid).account("Ruth", OCTOBER);
    assertEquals(new BigDecimal("-10.00"), account.balance());
    assertEquals("-10.00 0.00 0.00 0.00", Ledger.ages(account));
  }

  @Test
  void a_refund_raises_the_balance_and_a_tip_does_not_touch_it() {
    WrittenBook paid =
        book()
            .payment("Date: 2026-10-20, Owner: Ruth, Amount: 110")
            .payment("Date: 2026-10-21, Owner: Ruth, Amount: 10, Kind: refund")
            .payment("Date: 2026-10-22, Owner: Ruth, Amount: 5, Kind: tip");
    assertEquals(new BigDecimal("0.00"), ledger(paid).account("Ruth", OCTOBER).balance());
  }

  @Test
  void a_written_off_amount_lowers_the_balance_and_shows_in_the_state() {
    WrittenBook given =
        book()
            .payment(
                "Date: 2026-10-25, Owner: Ruth, Amount: 40, Invoice: 2026-0001, Kind: written off");
    Ledger ledger = ledger(given);
    Account account = ledger.account("Ruth", OCTOBER);
    assertEquals(new BigDecimal("60.00"), account.balance());
    assertEquals(PaidState.WRITTEN_OFF, PaidState.of(ledger.document("2026-0001"), account));
  }

  @Test
  void a_bounced_payment_is_a_refund_with_or_without_a_minus() {
    for (String amount : List.of("40", "-40")) {
      WrittenBook bounced =
          book()
              .payment("Date: 2026-10-20, Owner: Ruth, Amount: 40")
              .payment("Date: 2026-10-28, Owner: Ruth, Kind: refund, Amount: " + amount);
      Account account = ledger(bounced).account("Ruth", OCTOBER);
      assertEquals(new BigDecimal("20.00"), account.paid());
      assertEquals(new BigDecimal("100.00"), account.balance());
    }
  }

  /** The kind says which way the money went; a minus would say it twice. */
  @Test
  void a_minus_changes_neither_a_payment_nor_what_is_written_off() {
    for (String kind : List.of("payment", "deposit", "written off")) {
      WrittenBook minus =
          book().payment("Date: 2026-10-20, Owner: Ruth, Amount: -5, Kind: " + kind);
      assertEquals(new BigDecimal("95.00"), ledger(minus).account("Ruth", OCTOBER).balance(), kind);
    }
  }

  @Test
  void payments_before_the_opening_date_do_not_count() {
    WrittenBook early = book().payment("Date: 2026-08-20, Owner: Ruth, Amount: 30");
    assertEquals(new BigDecimal("70.00"), ledger(early).account("Ruth", SEPTEMBER).balance());
  }

  @Test
  void an_old_debt_ends_over_60_days_past_due() {
    Ledger ledger = ledger(book());
    ledger.run(book(), "2026-12");
    assertEquals("0.00 0.00 30.00 70.00", Ledger.ages(ledger.account("Ruth", DECEMBER)));
  }

  @Test
  void part_paid_and_paid_follow_from_payments_once_issued() {
    WrittenBook part =
        book().payment("Date: 2026-10-20, Owner: Ruth, Amount: 10, Invoice: 2026-0001");
    Ledger ledger = ledger(part);
    Account account = ledger.account("Ruth", OCTOBER);
    assertEquals(PaidState.PART_PAID, PaidState.of(ledger.document("2026-0001"), account));
    assertEquals(PaidState.DRAFT, PaidState.of(ledger.document("2026-0002"), account));
  }

  /** The first of the month is the month's, the day before is brought forward. */
  @ParameterizedTest
  @CsvSource({"2026-09-30, 50.00, 20.00", "2026-10-01, 70.00, 40.00"})
  void the_months_first_day_is_the_months(
      String day, BigDecimal broughtForward, BigDecimal paidInTheMonth) {
    WrittenBook paid = book().payment("Date: " + day + ", Owner: Ruth, Amount: 20");
    Account account = ledger(paid).account("Ruth", OCTOBER);
    assertEquals(broughtForward, account.broughtForward());
    assertEquals(paidInTheMonth, account.paid(), "20 of it at the truck");
    assertEquals(new BigDecimal("80.00"), account.balance());
  }

  /** So is the last; what is dated after it is of another month. */
  @ParameterizedTest
  @CsvSource({"2026-10-31, 80.00", "2026-11-01, 100.00"})
  void the_months_last_day_is_the_last_that_counts(String day, BigDecimal balance) {
    WrittenBook paid = book().payment("Date: " + day + ", Owner: Ruth, Amount: 20");
    assertEquals(balance, ledger(paid).account("Ruth", OCTOBER).balance());
  }

  /** What was paid before the opening balance was taken stands in it already. */
  @ParameterizedTest
  @CsvSource({"2026-09-09, 70.00", "2026-09-10, 50.00"})
  void the_opening_date_is_the_first_day_that_counts(String day, BigDecimal balance) {
    WrittenBook paid =
        book()
            .setting(Setting.OPENING_DATE, "2026-09-10")
            .payment("Date: " + day + ", Owner: Ruth, Amount: 20");
    assertEquals(balance, ledger(paid).account("Ruth", SEPTEMBER).balance());
  }

  @Test
  void an_opening_balance_of_a_later_day_is_not_yet_owed() {
    WrittenBook later = book().setting(Setting.OPENING_DATE, "2026-10-01");
    assertEquals(new BigDecimal("40.00"), ledger(later).account("Ruth", SEPTEMBER).balance());
    assertEquals(new BigDecimal("100.00"), ledger(later).account("Ruth", OCTOBER).balance());
  }

  @Test
  void movements_stand_by_day_and_on_one_day_the_document_first() {
    WrittenBook paid =
        book()
            .visit("Date: 2026-10-31, Horse: Jet, Owner: Ruth, Work: Trim, Charge: 10, Paid: 10")
            .payment("Date: 2026-10-31, Owner: Ruth, Amount: 5, Reference: b")
            .payment("Date: 2026-10-02, Owner: Ruth, Amount: 5, Reference: a");
    assertEquals(
        List.of(
            "2026-10-02 PAYMENT -5.00",
            "2026-10-05 TRUCK -20.00",
            "2026-10-31 DOCUMENT 60.00",
            "2026-10-31 TRUCK -10.00",
            "2026-10-31 PAYMENT -5.00"),
        ledger(paid).account("Ruth", OCTOBER).movements().stream()
            .map(move -> move.date() + " " + move.source() + " " + move.amount().toPlainString())
            .toList());
  }

  @Test
  void an_owner_without_any_movement_has_an_account_too() {
    WrittenBook quiet = book().owner("Owner: Zoe, Opening balance: 12");
    assertEquals(new BigDecimal("12.00"), ledger(quiet).account("Zoe", OCTOBER).balance());
  }

  @Test
  void what_one_owner_pays_closes_no_invoice_of_anothers() {
    WrittenBook two =
        book()
            .visit("Date: 2026-10-05, Horse: Jet, Owner: Adam, Work: Trim, Charge: 60")
            .payment("Date: 2026-10-20, Owner: Adam, Amount: 60");
    Ledger ledger = ledger(two);
    assertEquals("0.00 0.00 0.00 0.00", Ledger.ages(ledger.account("Adam", OCTOBER)));
    assertEquals("30.00 40.00 30.00 0.00", Ledger.ages(ledger.account("Ruth", OCTOBER)));
  }

  @Test
  void a_void_document_and_one_of_a_later_month_are_not_owed() {
    Ledger ledger = ledger(book()).run(book(), "2026-11");
    assertEquals(new BigDecimal("70.00"), ledger.account("Ruth", SEPTEMBER).balance());
    WrittenBook onlySeptember =
        new WrittenBook()
            .setting(Setting.CURRENCY, "GBP")
            .owner("Owner: Ruth, Opening balance: 30")
            .visit("Date: 2026-09-07, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 40");
    ledger.run(onlySeptember, "2026-10");
    assertEquals(new BigDecimal("70.00"), ledger.account("Ruth", OCTOBER).balance());
    assertEquals(Set.of("2026-0001"), ledger.account("Ruth", OCTOBER).open().keySet(), "none void");
  }

  /** 20 from the truck for the second visit: October's invoice, though September's is older. */
  @Test
  void money_from_the_truck_closes_the_invoice_that_bears_its_visit() {
    assertEquals(
        Map.of("2026-0001", new BigDecimal("40.00"), "2026-0002", new BigDecimal("30.00")),
        ledger(book()).account("Ruth", OCTOBER).open());
  }
}

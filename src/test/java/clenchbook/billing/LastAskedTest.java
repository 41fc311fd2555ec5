package clenchbook.billing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.corrections.BillingOptions;
import clenchbook.jobs.WrittenBook;
import java.time.YearMonth;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A run of send bills what the last month-end was asked to bill. */
class LastAskedTest {
  private static final YearMonth NOVEMBER = YearMonth.of(2026, 11);

  private static WrittenBook book() {
    return new WrittenBook()
        .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim")
        .visit("Date: 2026-11-09, Horse: Bess, Owner: Ruth, Work: Trim");
  }

  private static WrittenBook withLateRow() {
    return book().visit("Date: 2026-10-30, Horse: Dot, Owner: Ruth, Work: Trim");
  }

  private static Ledger october() {
    return new Ledger().run(book(), "2026-10").sendMonth("2026-10");
  }

  private static boolean includesEarlier(Ledger ledger) {
    return LastAsked.of(withLateRow().jobs(), ledger.documentList(), NOVEMBER, false)
        .includeEarlier();
  }

  @Test
  void drafts_that_bear_an_earlier_visit_were_asked_for_it() {
    assertEquals(true, includesEarlier(october().includingEarlier(withLateRow(), "2026-11")));
  }

  @Test
  void drafts_that_bear_none_were_not() {
    assertEquals(false, includesEarlier(october().run(withLateRow(), "2026-11")));
  }

  @Test
  void a_month_without_drafts_was_asked_nothing() {
    assertEquals(false, includesEarlier(october()));
  }

  @Test
  void what_went_out_already_no_longer_asks() {
    Ledger ledger = october().includingEarlier(withLateRow(), "2026-11").sendMonth("2026-11");
    assertEquals(false, includesEarlier(ledger));
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void whether_rows_are_held_is_passed_on(boolean held) {
    assertEquals(
        new BillingOptions(NOVEMBER, false, Optional.empty(), held),
        LastAsked.of(book().jobs(), october().documentList(), NOVEMBER, held));
  }
}

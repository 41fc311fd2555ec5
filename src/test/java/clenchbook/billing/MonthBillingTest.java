package clenchbook.billing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.corrections.Difference;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Setting;
import clenchbook.jobs.Job;
import clenchbook.jobs.WrittenBook;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** States, numbers and corrections. The rules are the program's own: common practice, no source. */
class MonthBillingTest {

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.CURRENCY, "GBP")
        .work("Work: Trim, Price: 40")
        .work("Work: Full set, Price: 100");
  }

  private static WrittenBook october() {
    return book()
        .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list")
        .visit("Date: 2026-10-06, Horse: Jet, Owner: Adam, Work: Full set, Charge: list");
  }

  @Test
  void invoices_are_numbered_in_the_order_of_owners() {
    Ledger ledger = new Ledger().run(october(), "2026-10");
    assertEquals(
        List.of("2026-0001 Adam 100.00 draft", "2026-0002 Ruth 40.00 draft"), ledger.documents());
  }

  @Test
  void the_same_run_again_decides_the_same() {
    Ledger once = new Ledger().run(october(), "2026-10");
    List<BilledDocument> first = once.last().documents();
    assertEquals(first, once.run(october(), "2026-10").last().documents());
  }

  @Test
  void a_draft_is_replaced_under_its_own_number() {
    Ledger ledger = new Ledger().run(october(), "2026-10");
    ledger.run(
        october().visit("Date: 2026-10-20, Horse: Jet, Owner: Adam, Work: Trim, Charge: list"),
        "2026-10");
    assertEquals(
        List.of("2026-0001 Adam 140.00 draft", "2026-0002 Ruth 40.00 draft"), ledger.documents());
  }

  @Test
  void a_draft_left_without_visits_becomes_void_and_is_taken_up_again() {
    Ledger ledger = new Ledger().run(october(), "2026-10");
    WrittenBook onlyRuth =
        book().visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list");
    ledger.run(onlyRuth, "2026-10");
    assertEquals(
        List.of("2026-0001 Adam 0.00 void", "2026-0002 Ruth 40.00 draft"), ledger.documents());
    ledger.run(october(), "2026-10");
    assertEquals(
        List.of("2026-0001 Adam 100.00 draft", "2026-0002 Ruth 40.00 draft"), ledger.documents());
  }

  @Test
  void a_payment_that_names_a_draft_issues_it() {
    Ledger ledger = new Ledger().run(october(), "2026-10");
    ledger.run(
        october().payment("Date: 2026-11-03, Owner: Adam, Amount: 100, Invoice: 2026-0001"),
        "2026-10");
    assertEquals("2026-0001 Adam 100.00 issued", ledger.documents().get(0));
  }

  @Test
  void a_changed_charge_is_reported_and_taken_back_by_the_next_month() {
    Ledger ledger = new Ledger().run(october(), "2026-10").send("2026-0001", "2026-0002");
    WrittenBook changed =
        book()
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 35")
            .visit("Date: 2026-10-06, Horse: Jet, Owner: Adam, Work: Full set, Charge: list")
            .visit("Date: 2026-11-09, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list");
    ledger.run(changed, "2026-10");
    assertEquals(Difference.Kind.TO_CORRECT, ledger.last().differences().get(0).kind());
    assertEquals("2026-0002 Ruth 40.00 issued", ledger.documents().get(1));
    ledger.run(changed, "2026-11");
    assertEquals(
        List.of(
            "2026-0001 Adam 100.00 issued",
            "2026-0002 Ruth 40.00 issued",
            "2026-0003 Ruth 75.00 draft",
            "2026-0004 Ruth -40.00 draft"),
        ledger.documents());
    assertEquals("2026-0002", ledger.document("2026-0004").corrects());
  }

  @Test
  void nothing_is_corrected_twice() {
    Ledger ledger = new Ledger().run(october(), "2026-10").send("2026-0001", "2026-0002");
    WrittenBook changed =
        book()
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 35")
            .visit("Date: 2026-10-06, Horse: Jet, Owner: Adam, Work: Full set, Charge: list");
    ledger.run(changed, "2026-11");
    List<String> once = ledger.documents();
    assertEquals(once, ledger.run(changed, "2026-11").documents(), "again as drafts");
    ledger.send("2026-0003", "2026-0004");
    ledger.run(changed, "2026-11").run(changed, "2026-12");
    assertEquals(4, ledger.documents().size(), "nothing new in December");
    assertTrue(ledger.last().differences().isEmpty());
  }

  @Test
  void correct_takes_back_at_once_and_the_new_line_stands_on_a_further_invoice() {
    Ledger ledger = new Ledger().run(october(), "2026-10").send("2026-0001", "2026-0002");
    WrittenBook changed =
        book()
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 35")
            .visit("Date: 2026-10-06, Horse: Jet, Owner: Adam, Work: Full set, Charge: list");
    ledger.correcting(changed, "2026-10", "2026-0002");
    assertEquals(
        List.of(
            "2026-0001 Adam 100.00 issued",
            "2026-0002 Ruth 40.00 issued",
            "2026-0003 Ruth 35.00 draft",
            "2026-0004 Ruth -40.00 draft"),
        ledger.documents());
  }

  @Test
  void a_deleted_visit_is_taken_back_without_a_new_line() {
    Ledger ledger = new Ledger().run(october(), "2026-10").send("2026-0001", "2026-0002");
    WrittenBook deleted =
        book().visit("Date: 2026-10-06, Horse: Jet, Owner: Adam, Work: Full set, Charge: list");
    ledger.run(deleted, "2026-11");
    assertEquals("2026-0003 Ruth -40.00 draft", ledger.documents().get(2));
    assertEquals(3, ledger.documents().size());
  }

  @Test
  void a_missing_row_is_not_taken_back_while_rows_are_held() {
    Ledger ledger = new Ledger().run(october(), "2026-10").send("2026-0001", "2026-0002");
    WrittenBook missing =
        book().visit("Date: 2026-10-06, Horse: Jet, Owner: Adam, Work: Full set, Charge: list");
    ledger.withRowsHeld(missing, "2026-11");
    assertEquals(2, ledger.documents().size());
    assertEquals(Difference.Kind.MAY_BE_HELD, ledger.last().differences().get(0).kind());
  }

  @Test
  void a_moved_date_is_one_visit_taken_back_and_billed_again_never_twice() {
    Ledger ledger = new Ledger().run(october(), "2026-10").send("2026-0001", "2026-0002");
    WrittenBook moved =
        book()
            .visit("Date: 2026-10-07, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list")
            .visit("Date: 2026-10-06, Horse: Jet, Owner: Adam, Work: Full set, Charge: list");
    ledger.run(moved, "2026-10");
    assertEquals(2, ledger.documents().size(), "not billed as if it were new");
    ledger.run(moved, "2026-11");
    assertEquals(
        List.of("2026-0003 Ruth 40.00 draft", "2026-0004 Ruth -40.00 draft"),
        ledger.documents().subList(2, 4));
  }

  @Test
  void a_price_list_changed_after_issue_touches_drafts_only() {
    Ledger ledger = new Ledger().run(october(), "2026-10").send("2026-0001");
    WrittenBook dearer =
        new WrittenBook()
            .setting(Setting.CURRENCY, "GBP")
            .work("Work: Trim, Price: 45")
            .work("Work: Full set, Price: 120")
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list")
            .visit("Date: 2026-10-06, Horse: Jet, Owner: Adam, Work: Full set, Charge: list");
    ledger.run(dearer, "2026-10");
    assertEquals(
        List.of("2026-0001 Adam 100.00 issued", "2026-0002 Ruth 45.00 draft"), ledger.documents());
    ledger.run(dearer, "2026-11");
    assertEquals(2, ledger.documents().size());
    assertEquals(Difference.Kind.LISTED, ledger.last().differences().get(0).kind());
  }

  @Test
  void a_renamed_owner_is_listed_and_not_billed_again() {
    Ledger ledger = new Ledger().run(october(), "2026-10").send("2026-0001", "2026-0002");
    WrittenBook renamed =
        book()
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth Kane, Work: Trim, Charge: list")
            .visit("Date: 2026-10-06, Horse: Jet, Owner: Adam, Work: Full set, Charge: list");
    ledger.run(renamed, "2026-11");
    assertEquals(2, ledger.documents().size());
    assertEquals(Difference.Kind.LISTED, ledger.last().differences().get(0).kind());
  }

  @Test
  void a_second_horse_added_late_stands_on_a_further_invoice_of_the_month() {
    Ledger ledger = new Ledger().run(october(), "2026-10").send("2026-0001", "2026-0002");
    ledger.run(
        october().visit("Date: 2026-10-30, Horse: Dot, Owner: Ruth, Work: Trim, Charge: list"),
        "2026-10");
    assertEquals("2026-0003 Ruth 40.00 draft", ledger.documents().get(2));
  }

  @Test
  void an_earlier_visit_is_reported_and_billed_only_when_asked() {
    Ledger ledger = new Ledger().run(october(), "2026-10").send("2026-0001", "2026-0002");
    WrittenBook late =
        october()
            .visit("Date: 2026-10-30, Horse: Dot, Owner: Ruth, Work: Full set, Charge: list")
            .visit("Date: 2026-11-09, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list")
            .visit("Date: 2026-09-09, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list");
    ledger.run(late, "2026-11");
    assertEquals("2026-0003 Ruth 40.00 draft", ledger.documents().get(2));
    assertEquals(1, ledger.last().unbilled().size(), "September lies before the register");
    ledger.includingEarlier(late, "2026-11");
    assertEquals("2026-0003 Ruth 140.00 draft", ledger.documents().get(2));
  }

  @Test
  void a_horse_sold_in_mid_month_is_billed_to_each_owner_for_their_days() {
    WrittenBook sold =
        book()
            .horse("Horse: Bess, Owner: Ruth, Until: 2026-10-15")
            .horse("Horse: Bess, Owner: Adam, From: 2026-10-16")
            .visit("Date: 2026-10-15, Horse: Bess, Work: Trim, Charge: list")
            .visit("Date: 2026-10-16, Horse: Bess, Work: Full set, Charge: list");
    assertEquals(
        List.of("2026-0001 Adam 100.00 draft", "2026-0002 Ruth 40.00 draft"),
        new Ledger().run(sold, "2026-10").documents());
  }

  @Test
  void changed_shares_leave_an_issued_invoice_alone() {
    WrittenBook half =
        book()
            .horse("Horse: Bess, Owner: Ruth, Share %: 50")
            .horse("Horse: Bess, Owner: Adam, Share %: 50")
            .visit("Date: 2026-10-05, Horse: Bess, Work: Full set, Charge: list");
    Ledger ledger = new Ledger().run(half, "2026-10").send("2026-0001", "2026-0002");
    WrittenBook other =
        book()
            .horse("Horse: Bess, Owner: Ruth, Share %: 25")
            .horse("Horse: Bess, Owner: Adam, Share %: 75")
            .visit("Date: 2026-10-05, Horse: Bess, Work: Full set, Charge: list");
    List<String> before = ledger.documents();
    assertEquals(before, ledger.run(other, "2026-11").documents());
  }

  @Test
  void a_new_year_starts_its_own_series() {
    Ledger ledger = new Ledger().run(october(), "2026-10");
    ledger.run(
        october().visit("Date: 2027-01-09, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list"),
        "2027-01");
    assertEquals("2027-0001 Ruth 40.00 draft", ledger.documents().get(2));
  }

  @Test
  void a_free_visit_makes_a_nil_invoice() {
    WrittenBook free =
        book().visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 0");
    assertEquals(
        List.of("2026-0001 Ruth 0.00 draft"), new Ledger().run(free, "2026-10").documents());
  }

  /** The register begins with October; what is older was billed before there was one. */
  @Test
  void an_opening_date_within_the_registers_months_is_the_first_day_that_is_billed() {
    WrittenBook book =
        october()
            .setting(Setting.OPENING_DATE, "2026-10-10")
            .visit("Date: 2026-10-09, Horse: Dot, Owner: Ruth, Work: Trim, Charge: list")
            .visit("Date: 2026-10-10, Horse: Dot, Owner: Ruth, Work: Trim, Charge: list");
    Ledger ledger = new Ledger().run(october(), "2026-10").send("2026-0001", "2026-0002");
    ledger.run(book, "2026-11");
    assertEquals(
        List.of(LocalDate.of(2026, 10, 10)),
        ledger.last().unbilled().stream().map(Job::date).toList());
  }

  @Test
  void an_opening_date_before_the_register_adds_no_months_to_it() {
    WrittenBook book =
        october()
            .setting(Setting.OPENING_DATE, "2026-01-01")
            .visit("Date: 2026-09-30, Horse: Dot, Owner: Ruth, Work: Trim, Charge: list")
            .visit("Date: 2026-10-01, Horse: Dot, Owner: Ruth, Work: Trim, Charge: list");
    Ledger ledger = new Ledger().run(october(), "2026-10").send("2026-0001", "2026-0002");
    ledger.run(book, "2026-11");
    assertEquals(
        List.of(LocalDate.of(2026, 10, 1)),
        ledger.last().unbilled().stream().map(Job::date).toList());
  }

  @Test
  void a_later_month_in_the_register_does_not_move_its_beginning() {
    Ledger ledger = new Ledger().run(october(), "2026-10").run(october(), "2026-11");
    ledger.run(october(), "2026-10");
    assertEquals(LocalDate.of(2026, 10, 1), ledger.last().openingDate());
  }

  @Test
  void a_run_that_begins_a_register_issues_nothing_though_a_payment_names_the_number() {
    WrittenBook paid =
        october().payment("Date: 2026-11-03, Owner: Adam, Amount: 100, Invoice: 2026-0001");
    assertEquals(
        List.of("2026-0001 Adam 100.00 draft", "2026-0002 Ruth 40.00 draft"),
        new Ledger().run(paid, "2026-10").documents());
  }

  @Test
  void a_payment_may_name_what_the_run_itself_drafts() {
    WrittenBook paid =
        october()
            .visit("Date: 2026-11-09, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list")
            .payment("Date: 2026-12-03, Owner: Ruth, Amount: 40, Invoice: 2026-0003");
    Ledger ledger = new Ledger().run(october(), "2026-10").run(paid, "2026-11");
    assertEquals("2026-0003 Ruth 40.00 issued", ledger.documents().get(2));
  }

  @Test
  void documents_stand_in_the_order_of_their_numbers_whatever_the_month() {
    Ledger ledger = new Ledger().run(october(), "2026-11").run(october(), "2026-10");
    ledger.run(
        october().visit("Date: 2026-11-20, Horse: Jet, Owner: Zoe, Work: Trim, Charge: list"),
        "2026-11");
    assertEquals(
        List.of(
            "2026-0001 Adam 100.00 draft",
            "2026-0002 Ruth 40.00 draft",
            "2026-0003 Zoe 40.00 draft"),
        ledger.documents());
    ledger.run(october(), "2026-10");
    assertEquals("2026-0003 Zoe 40.00 draft", ledger.documents().get(2));
  }

  @Test
  void an_invoice_is_due_after_the_owners_own_terms_else_the_books() {
    WrittenBook terms =
        october().setting(Setting.TERMS_DAYS, "10").owner("Owner: Ruth, Terms days: 30");
    Ledger ledger = new Ledger().run(terms, "2026-10");
    assertEquals(LocalDate.of(2026, 11, 10), ledger.document("2026-0001").due());
    assertEquals(LocalDate.of(2026, 11, 30), ledger.document("2026-0002").due());
  }

  @Test
  void a_credit_note_is_due_on_its_own_day_and_takes_no_invoices_number() {
    Ledger ledger = new Ledger().run(october(), "2026-10").send("2026-0001", "2026-0002");
    WrittenBook ruth45 =
        book()
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 45")
            .visit("Date: 2026-10-06, Horse: Jet, Owner: Adam, Work: Full set, Charge: list");
    ledger.run(ruth45, "2026-11");
    assertEquals(LocalDate.of(2026, 11, 30), ledger.document("2026-0004").due());
    assertEquals(LocalDate.of(2026, 12, 14), ledger.document("2026-0003").due());
    // The new invoice's reason is gone; the credit note keeps its own number.
    WrittenBook gone =
        book().visit("Date: 2026-10-06, Horse: Jet, Owner: Adam, Work: Full set, Charge: list");
    ledger.run(gone, "2026-11");
    assertEquals(
        List.of("2026-0003 Ruth 0.00 void", "2026-0004 Ruth -40.00 draft"),
        ledger.documents().subList(2, 4));
  }
}

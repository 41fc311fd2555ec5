package clenchbook.billing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.corrections.Difference;
import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Orders of events in which a visit was once billed twice or not at all. What is right is plain
 * addition over the book (common practice, no source).
 */
class OrderOfEventsTest {
  private static final String BESS =
      "Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: ";
  private static final String JET =
      "Date: 2026-10-06, Horse: Jet, Owner: Adam, Work: Full set, Charge: 100";

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.CURRENCY, "GBP")
        .work("Work: Trim, Price: 40")
        .work("Work: Full set, Price: 100");
  }

  private static WrittenBook october(String charge) {
    return book().visit(BESS + charge).visit(JET);
  }

  private static Ledger sent() {
    return new Ledger().run(october("40"), "2026-10").send("2026-0001", "2026-0002");
  }

  private static void netOfRuth(String amount, Ledger ledger) {
    BigDecimal net =
        ledger.issued().stream()
            .filter(document -> document.owner().equals("Ruth"))
            .map(document -> document.gross())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertEquals(new BigDecimal(amount), net, ledger.documents().toString());
  }

  @Test
  void a_row_deleted_and_put_back_is_billed_once_though_a_credit_note_was_drafted() {
    Ledger ledger = sent().run(book().visit(JET), "2026-11");
    assertTrue(ledger.documents().contains("2026-0003 Ruth -40.00 draft"));

    ledger.run(october("40"), "2026-10");
    assertEquals(3, ledger.documents().size(), "nothing to bill again in October");
    ledger.sendMonth("2026-10").run(october("40"), "2026-11").sendMonth("2026-11");

    assertTrue(ledger.documents().contains("2026-0003 Ruth 0.00 void"), "its reason is gone");
    netOfRuth("40.00", ledger);
  }

  @Test
  void a_date_moved_to_the_next_month_and_back_is_billed_once() {
    Ledger ledger = sent();
    WrittenBook moved =
        book()
            .visit("Date: 2026-11-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 40")
            .visit(JET);
    ledger.run(moved, "2026-11").run(october("40"), "2026-10").sendMonth("2026-10");
    ledger.run(october("40"), "2026-11").sendMonth("2026-11");
    netOfRuth("40.00", ledger);
  }

  @Test
  void a_work_changed_and_changed_back_is_billed_once() {
    Ledger ledger = sent();
    WrittenBook other =
        book()
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Full set, Charge: 40")
            .visit(JET);
    ledger.run(other, "2026-11").run(october("40"), "2026-10").sendMonth("2026-10");
    ledger.run(october("40"), "2026-11").sendMonth("2026-11");
    netOfRuth("40.00", ledger);
  }

  @Test
  void a_payment_that_names_one_sharers_draft_issues_the_other_sharers_too() {
    WrittenBook shared =
        book()
            .horse("Horse: Bess, Owner: Ruth, Share %: 46")
            .horse("Horse: Bess, Owner: Adam, Share %: 54")
            .visit("Date: 2026-10-05, Horse: Bess, Work: Trim, Charge: 120");
    Ledger ledger = new Ledger().run(shared, "2026-10");
    ledger.run(
        shared.payment("Date: 2026-11-02, Owner: Ruth, Amount: 55.20, Invoice: 2026-0002"),
        "2026-10");
    assertEquals(
        List.of("2026-0001 Adam 64.80 issued", "2026-0002 Ruth 55.20 issued"), ledger.documents());
  }

  @Test
  void a_sharer_left_without_an_invoice_gets_one() {
    WrittenBook shared =
        book()
            .horse("Horse: Bess, Owner: Ruth, Share %: 46")
            .horse("Horse: Bess, Owner: Adam, Share %: 54")
            .visit("Date: 2026-10-05, Horse: Bess, Work: Trim, Charge: 120");
    Ledger ledger = new Ledger().run(shared, "2026-10").send("2026-0002").without("2026-0001");
    ledger.run(shared, "2026-10");
    assertEquals(
        List.of("2026-0002 Ruth 55.20 issued", "2026-0003 Adam 64.80 draft"), ledger.documents());
  }

  @Test
  void a_payment_that_names_a_new_invoice_issues_the_credit_note_of_its_correction() {
    WrittenBook dearer = october("55");
    Ledger ledger = sent().run(dearer, "2026-11");
    dearer.payment("Date: 2026-12-02, Owner: Ruth, Amount: 55, Invoice: 2026-0003");
    ledger.run(dearer, "2026-11").run(dearer, "2026-12");
    assertEquals(
        List.of(
            "2026-0001 Adam 100.00 issued",
            "2026-0002 Ruth 40.00 issued",
            "2026-0003 Ruth 55.00 issued",
            "2026-0004 Ruth -40.00 issued"),
        ledger.documents());
  }

  @Test
  void so_it_does_where_the_visit_moved_to_another_day() {
    WrittenBook moved =
        book()
            .visit("Date: 2026-10-07, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 40")
            .visit(JET);
    Ledger ledger = sent().run(moved, "2026-11");
    moved.payment("Date: 2026-12-02, Owner: Ruth, Amount: 40, Invoice: 2026-0003");
    ledger.run(moved, "2026-12");
    netOfRuth("40.00", ledger);
    assertTrue(ledger.documents().contains("2026-0004 Ruth -40.00 issued"));
  }

  @Test
  void of_two_horses_of_one_name_the_one_whose_row_is_gone_is_taken_back() {
    WrittenBook both =
        book()
            .horse("Horse: Star, Owner: Adam")
            .horse("Horse: Star, Owner: Ruth")
            .visit("Date: 2026-10-05, Horse: Star, Owner: Adam, Work: Trim, Charge: 40")
            .visit("Date: 2026-10-05, Horse: Star, Owner: Ruth, Work: Trim, Charge: 40");
    Ledger ledger = new Ledger().run(both, "2026-10").send("2026-0001", "2026-0002");
    WrittenBook ruthOnly =
        book()
            .horse("Horse: Star, Owner: Adam")
            .horse("Horse: Star, Owner: Ruth")
            .visit("Date: 2026-10-05, Horse: Star, Owner: Ruth, Work: Trim, Charge: 40");
    ledger.run(ruthOnly, "2026-11");
    assertEquals("2026-0003 Adam -40.00 draft", ledger.documents().get(2));
    assertEquals(3, ledger.documents().size());
  }

  @Test
  void so_it_is_without_a_sheet_of_horses() {
    WrittenBook both =
        book()
            .visit("Date: 2026-10-05, Horse: Star, Owner: Adam, Work: Trim, Charge: 40")
            .visit("Date: 2026-10-05, Horse: Star, Owner: Ruth, Work: Trim, Charge: 40");
    Ledger ledger = new Ledger().run(both, "2026-10").send("2026-0001", "2026-0002");
    WrittenBook ruthOnly =
        book().visit("Date: 2026-10-05, Horse: Star, Owner: Ruth, Work: Trim, Charge: 40");
    ledger.run(ruthOnly, "2026-11");
    assertEquals("2026-0003 Adam -40.00 draft", ledger.documents().get(2));
    assertEquals(3, ledger.documents().size());
  }

  @Test
  void of_two_rows_alike_the_one_whose_charge_is_gone_is_taken_back() {
    WrittenBook two = book().visit(BESS + "40").visit(BESS + "30");
    Ledger ledger = new Ledger().run(two, "2026-10").send("2026-0001");
    ledger.run(book().visit(BESS + "30"), "2026-11");
    assertEquals(
        List.of("2026-0001 Ruth 70.00 issued", "2026-0002 Ruth -40.00 draft"), ledger.documents());
  }

  @Test
  void a_correction_into_a_month_before_the_invoices_own_makes_no_credit_note() {
    WrittenBook november =
        book().visit("Date: 2026-11-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 40");
    Ledger ledger = new Ledger().run(november, "2026-11").send("2026-0001");
    WrittenBook dearer =
        book().visit("Date: 2026-11-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 50");
    ledger.correcting(dearer, "2026-10", "2026-0001");
    assertEquals(List.of("2026-0001 Ruth 40.00 issued"), ledger.documents());
  }

  @Test
  void a_correction_on_another_months_draft_is_not_made_again() {
    WrittenBook dearer = october("55");
    Ledger ledger = sent().run(dearer, "2026-11").run(dearer, "2026-12");
    assertEquals(4, ledger.documents().size());
    assertEquals(Difference.Kind.ON_DRAFT, ledger.last().differences().get(0).kind());
    ledger.sendMonth("2026-12").sendMonth("2026-11");
    netOfRuth("55.00", ledger);
  }

  @Test
  void a_visit_that_an_older_version_billed_twice_is_taken_back_once() {
    Ledger ledger = sent().run(october("55"), "2026-11").send("2026-0003").voiding("2026-0004");
    ledger.run(october("55"), "2026-12").sendMonth("2026-12");
    netOfRuth("55.00", ledger);
  }

  @Test
  void a_correction_asked_for_stays_while_its_reason_does() {
    Ledger ledger = sent().correcting(october("35"), "2026-10", "2026-0002");
    List<String> asked = ledger.documents();
    assertEquals(asked, ledger.run(october("35"), "2026-10").documents());
    ledger.run(october("40"), "2026-10");
    assertEquals(
        List.of("2026-0003 Ruth 0.00 void", "2026-0004 Ruth 0.00 void"),
        ledger.documents().subList(2, 4));
  }

  @Test
  void a_row_held_back_is_not_taken_for_another_visit_of_the_same_horse() {
    WrittenBook both =
        october("40").visit("Date: 2026-09-07, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 40");
    Ledger ledger = new Ledger().run(both, "2026-10").sendMonth("2026-10");
    WrittenBook held =
        book()
            .visit(JET)
            .visit("Date: 2026-09-07, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 40");

    ledger.withRowsHeld(held, "2026-11");

    assertEquals(
        Difference.Kind.MAY_BE_HELD, ledger.last().differences().get(0).kind(), "and no credit");
    assertEquals(2, ledger.documents().size(), ledger.documents().toString());
  }

  @Test
  void a_charge_changed_beside_a_held_row_of_the_same_day_horse_and_work_waits_for_that_row() {
    Ledger ledger =
        new Ledger()
            .run(book().visit(BESS + "31.01").visit(BESS + "40").visit(JET), "2026-10")
            .sendMonth("2026-10");
    // The second row's date is unreadable, the first one's charge is put right, or the other way.
    ledger.withRowsHeld(book().visit(BESS + "50").visit(JET), "2026-11");
    assertEquals(2, ledger.documents().size(), ledger.documents().toString());

    ledger.run(book().visit(BESS + "31.01").visit(BESS + "50").visit(JET), "2026-11");
    ledger.sendMonth("2026-11");
    netOfRuth("81.01", ledger);
  }

  @Test
  void a_correction_asked_for_twice_takes_back_no_more_than_asked_for_once() {
    WrittenBook shared =
        book()
            .horse("Horse: Bess, Owner: Ruth, Share %: 50")
            .horse("Horse: Bess, Owner: Adam, Share %: 50");
    String bess = "Date: 2026-10-05, Horse: Bess, Work: Trim, Charge: 40";
    String star = "Date: 2026-10-06, Horse: Star, Owner: Ruth, Work: Trim, Charge: 57";
    Ledger ledger = new Ledger().run(shared.visit(bess).visit(star), "2026-10");
    ledger.sendMonth("2026-10");
    // Both rows are deleted; what is asked for is Adam's invoice, and his sharer's part goes with
    // it.
    List<String> once = ledger.correcting(book(), "2026-10", "2026-0001").documents();
    List<String> twice = ledger.correcting(book(), "2026-10", "2026-0001").documents();
    assertEquals(once, twice);
    assertTrue(twice.contains("2026-0004 Ruth -20.00 draft"), twice.toString());
  }
}

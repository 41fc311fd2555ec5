package clenchbook.billing.corrections;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.Ledger;
import clenchbook.jobs.WrittenBook;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What credit notes take back, and what is billed anew for it; added up on paper. */
class CreditsTest {
  private static final String BESS = "Horse: Bess, Owner: Ruth, Work: Trim, Charge: ";
  private static final String JET = "Horse: Jet, Owner: Adam, Work: Trim, Charge: ";

  private static WrittenBook two(String bess, String jet) {
    return new WrittenBook()
        .visit("Date: 2026-10-05, " + BESS + bess)
        .visit("Date: 2026-10-06, " + JET + jet);
  }

  private static Ledger sent() {
    return new Ledger().run(two("40", "60"), "2026-10").sendMonth("2026-10");
  }

  @Test
  void credit_notes_follow_the_new_invoices_in_the_order_of_owners() {
    Ledger ledger = sent().run(two("45", "65"), "2026-11");
    assertEquals(
        List.of(
            "2026-0003 Adam 65.00 draft",
            "2026-0004 Ruth 45.00 draft",
            "2026-0005 Adam -60.00 draft",
            "2026-0006 Ruth -40.00 draft"),
        ledger.documents().subList(2, 6));
    assertEquals("2026-0001", ledger.document("2026-0005").corrects());
    assertEquals(
        List.of(
            "2026-0001 CORRECTED: CHARGE 60.00>65.00", "2026-0002 CORRECTED: CHARGE 40.00>45.00"),
        ledger.differences());
  }

  @Test
  void two_invoices_of_one_owner_are_taken_back_by_two_credit_notes() {
    String second = "Date: 2026-10-20, " + BESS;
    Ledger ledger =
        sent().run(two("40", "60").visit(second + "30"), "2026-10").sendMonth("2026-10");
    ledger.run(two("45", "60").visit(second + "35"), "2026-11");
    assertEquals(
        List.of(
            "2026-0004 Ruth 80.00 draft",
            "2026-0005 Ruth -40.00 draft",
            "2026-0006 Ruth -30.00 draft"),
        ledger.documents().subList(3, 6));
    assertEquals("2026-0002", ledger.document("2026-0005").corrects());
    assertEquals("2026-0003", ledger.document("2026-0006").corrects());
  }

  @Test
  void a_visit_moved_past_the_month_is_taken_back_now_and_billed_in_its_own_month() {
    WrittenBook moved =
        new WrittenBook()
            .visit("Date: 2026-11-02, " + BESS + "40")
            .visit("Date: 2026-10-06, " + JET + "60");
    Ledger ledger = sent().correcting(moved, "2026-10", "2026-0002");
    assertEquals(List.of("2026-0003 Ruth -40.00 draft"), ledger.documents().subList(2, 3));
    ledger.sendMonth("2026-10").run(moved, "2026-11");
    assertEquals(List.of("2026-0004 Ruth 40.00 draft"), ledger.documents().subList(3, 4));
  }

  @Test
  void one_number_asked_for_corrects_no_other() {
    Ledger ledger = sent().correcting(two("45", "65"), "2026-10", " 2026-0002 ");
    assertEquals(
        List.of("2026-0003 Ruth 45.00 draft", "2026-0004 Ruth -40.00 draft"),
        ledger.documents().subList(2, 4));
    assertEquals(4, ledger.documents().size());
  }

  /** A draft credit note takes nothing back: its month may still be run otherwise. */
  @Test
  void a_drafted_credit_note_frees_no_visit_for_another_month() {
    Ledger ledger = sent().run(two("45", "60"), "2026-11").run(two("45", "60"), "2026-12");
    assertEquals(4, ledger.documents().size());
    assertEquals(List.of("2026-0002 ON_DRAFT: CHARGE 40.00>45.00"), ledger.differences());
  }

  /** As registers of an older version may hold it: the new line went out, the credit did not. */
  @Test
  void of_two_invoices_for_one_visit_the_one_that_says_what_the_row_says_stands() {
    Ledger ledger = sent().run(two("45", "60"), "2026-11").send("2026-0003").voiding("2026-0004");
    ledger.run(two("45", "60"), "2026-12");
    assertEquals(List.of("2026-0002 CORRECTED: TWICE 2026-0003>"), ledger.differences());
    assertEquals(List.of("2026-0005 Ruth -40.00 draft"), ledger.documents().subList(4, 5));
  }

  @Test
  void so_it_is_where_the_row_says_again_what_the_first_one_says() {
    Ledger ledger = sent().run(two("45", "60"), "2026-11").send("2026-0003").voiding("2026-0004");
    ledger.run(two("40", "60"), "2026-12");
    assertEquals(List.of("2026-0003 CORRECTED: TWICE 2026-0002>"), ledger.differences());
    assertEquals(List.of("2026-0005 Ruth -45.00 draft"), ledger.documents().subList(4, 5));
  }

  @Test
  void it_waits_in_the_months_own_run_and_while_a_draft_names_the_visit() {
    Ledger ledger = sent().run(two("45", "60"), "2026-11").send("2026-0003").voiding("2026-0004");
    ledger.run(two("45", "60"), "2026-10");
    assertEquals(List.of("2026-0002 TO_CORRECT: TWICE 2026-0003>"), ledger.differences());
    ledger.run(two("45", "60"), "2026-12").run(two("45", "60"), "2027-01");
    assertEquals(List.of("2026-0002 ON_DRAFT: TWICE 2026-0003>"), ledger.differences());
  }
}

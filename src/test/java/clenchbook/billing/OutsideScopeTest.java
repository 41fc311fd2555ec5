package clenchbook.billing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Lines outside the scope of tax on an invoice of their own: EN 16931-1, BR-O-11 to BR-O-14 allow
 * no other category beside O.
 */
class OutsideScopeTest {
  private static final String TRIM = "Horse: Bess, Owner: Ruth, Work: Trim, Charge: 40";
  private static final String ABROAD = "Horse: Bess, Owner: Ruth, Work: Abroad, Charge: 70";

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.TAX_NUMBER, "GB123")
        .tax("Code: S, Name: VAT, Rate %: 20")
        .tax("Code: O, Name: Outside, Rate %: 0, Kind: outside scope")
        .work("Work: Trim, Tax: S, Price: 40")
        .work("Work: Abroad, Tax: O, Price: 70");
  }

  private static WrittenBook both() {
    return book().visit("Date: 2026-10-05, " + ABROAD).visit("Date: 2026-10-06, " + TRIM);
  }

  @Test
  void they_stand_on_a_second_invoice_of_the_owner() {
    Ledger ledger = new Ledger().run(both(), "2026-10");
    assertEquals(
        List.of("2026-0001 Ruth 48.00 draft", "2026-0002 Ruth 70.00 draft"), ledger.documents());
    assertEquals(false, ledger.document("2026-0001").outsideScope());
    assertEquals(true, ledger.document("2026-0002").outsideScope());
  }

  @Test
  void each_keeps_its_number_in_the_next_run() {
    Ledger ledger = new Ledger().run(both(), "2026-10");
    List<String> once = ledger.documents();
    assertEquals(once, ledger.run(both(), "2026-10").documents());
  }

  @Test
  void one_kind_alone_takes_up_its_own_draft_and_voids_the_other() {
    Ledger ledger = new Ledger().run(both(), "2026-10");
    ledger.run(book().visit("Date: 2026-10-05, " + ABROAD), "2026-10");
    assertEquals(
        List.of("2026-0001 Ruth 0.00 void", "2026-0002 Ruth 70.00 draft"), ledger.documents());
    assertEquals(false, ledger.document("2026-0001").outsideScope(), "nothing is on it");
  }

  @Test
  void a_draft_of_the_other_kind_alone_keeps_its_number_beside_the_new_one() {
    Ledger ledger = new Ledger().run(book().visit("Date: 2026-10-05, " + ABROAD), "2026-10");
    ledger.run(both(), "2026-10");
    assertEquals(
        List.of("2026-0001 Ruth 70.00 draft", "2026-0002 Ruth 48.00 draft"), ledger.documents());
  }

  @Test
  void each_names_the_other_and_no_other_document() {
    WrittenBook book = both().visit("Date: 2026-10-07, Horse: Jet, Owner: Adam, Work: Abroad");
    Ledger ledger = new Ledger().run(book, "2026-10");
    assertEquals(
        List.of(
            "2026-0001 Adam 50.00 draft",
            "2026-0002 Ruth 48.00 draft",
            "2026-0003 Ruth 70.00 draft"),
        ledger.documents());
    assertEquals(List.of("2026-0003"), beside(ledger, "2026-0002"));
    assertEquals(List.of("2026-0002"), beside(ledger, "2026-0003"));
    assertEquals(List.of(), beside(ledger, "2026-0001"));
  }

  @Test
  void neither_a_credit_note_nor_a_void_invoice_stands_beside() {
    Ledger ledger = new Ledger().run(both(), "2026-10").sendMonth("2026-10");
    ledger.correcting(book().visit("Date: 2026-10-05, " + ABROAD), "2026-10", "2026-0001");
    assertEquals("2026-0003 Ruth -48.00 draft", ledger.documents().get(2));
    assertEquals(List.of("2026-0001"), beside(ledger, "2026-0002"));

    Ledger drafts = new Ledger().run(both(), "2026-10");
    drafts.run(book().visit("Date: 2026-10-05, " + ABROAD), "2026-10");
    assertEquals(List.of(), beside(drafts, "2026-0002"));
  }

  private static List<String> beside(Ledger ledger, String number) {
    BilledDocument document = ledger.document(number);
    return ledger.last().beside(document);
  }
}

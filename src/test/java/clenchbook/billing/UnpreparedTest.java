package clenchbook.billing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.jobs.WrittenBook;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Nothing goes out that the farrier could not look at in the form in which it goes. */
class UnpreparedTest {
  private static final String BESS = "Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim";
  private static final String JET = "Date: 2026-10-06, Horse: Jet, Owner: Adam, Work: Trim";

  /** What is not as prepared, as {@code number gross now, gross before}. */
  private static List<String> unprepared(Ledger prepared, WrittenBook book) {
    List<BilledDocument> register = prepared.documentList();
    BillingDecision now = prepared.run(book, "2026-10").last();
    return Unprepared.of(register, now).stream()
        .map(
            one ->
                one.now().number()
                    + " "
                    + one.now().gross().toPlainString()
                    + ", "
                    + one.before().map(before -> before.gross().toPlainString()).orElse("new"))
        .toList();
  }

  private static Ledger prepared() {
    return new Ledger().run(new WrittenBook().visit(BESS).visit(JET), "2026-10");
  }

  @Test
  void the_same_book_is_as_prepared() {
    assertEquals(List.of(), unprepared(prepared(), new WrittenBook().visit(BESS).visit(JET)));
  }

  @Test
  void a_changed_draft_is_named_with_what_it_was() {
    WrittenBook dearer = new WrittenBook().visit(BESS + ", Charge: 55").visit(JET);
    assertEquals(List.of("2026-0002 55.00, 50.00"), unprepared(prepared(), dearer));
  }

  @Test
  void a_new_draft_has_nothing_before_it() {
    WrittenBook more =
        new WrittenBook()
            .visit(BESS)
            .visit(JET)
            .visit("Date: 2026-10-07, Horse: Dot, Owner: Zoe, Work: Trim");
    assertEquals(List.of("2026-0003 50.00, new"), unprepared(prepared(), more));
  }

  @Test
  void a_draft_left_with_nothing_is_named() {
    assertEquals(
        List.of("2026-0001 0.00, 50.00"), unprepared(prepared(), new WrittenBook().visit(BESS)));
  }

  @Test
  void one_that_was_void_before_is_not_named_again() {
    Ledger prepared = prepared().run(new WrittenBook().visit(BESS), "2026-10");
    assertEquals(List.of(), unprepared(prepared, new WrittenBook().visit(BESS)));
  }

  @Test
  void one_taken_up_again_has_nothing_before_it() {
    Ledger prepared = prepared().run(new WrittenBook().visit(BESS), "2026-10");
    assertEquals(
        List.of("2026-0001 50.00, new"),
        unprepared(prepared, new WrittenBook().visit(BESS).visit(JET)));
  }

  @Test
  void what_is_out_already_is_never_unprepared() {
    WrittenBook dearer = new WrittenBook().visit(BESS + ", Charge: 55").visit(JET);
    assertEquals(List.of(), unprepared(prepared().sendMonth("2026-10"), dearer));
  }
}

package clenchbook.billing.corrections;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.Ledger;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Whom no document bills for a visit, net of credit notes; drafts count like issued documents. */
class UnbilledVisitsTest {
  private static final String ROW = "Date: 2026-10-05, Horse: Bess, Work: Trim, Charge: 40";

  private static WrittenBook shared() {
    return new WrittenBook()
        .horse("Horse: Bess, Owner: Ruth, Share %: 50")
        .horse("Horse: Bess, Owner: Adam, Share %: 50");
  }

  private static Set<String> unbilled(WrittenBook book, Ledger ledger) {
    Jobs jobs = book.jobs();
    return new UnbilledVisits(jobs, ledger.documentList()).payers(jobs.all().get(0));
  }

  @Test
  void a_visit_on_no_document_is_unbilled_to_all_its_payers() {
    assertEquals(List.of("Ruth", "Adam"), List.copyOf(unbilled(shared().visit(ROW), new Ledger())));
  }

  @Test
  void a_draft_bills_it() {
    WrittenBook book = shared().visit(ROW);
    assertEquals(Set.of(), unbilled(book, new Ledger().run(book, "2026-10")));
  }

  @Test
  void a_payer_whose_document_is_missing_is_unbilled() {
    WrittenBook book = shared().visit(ROW);
    Ledger ledger = new Ledger().run(book, "2026-10").without("2026-0001");
    assertEquals(Set.of("Adam"), unbilled(book, ledger));
    assertEquals(Set.of("Ruth", "Adam"), unbilled(book, ledger.voiding("2026-0002")));
  }

  @Test
  void a_visit_taken_back_is_unbilled_again() {
    WrittenBook book = shared().visit(ROW);
    Ledger ledger = new Ledger().run(book, "2026-10").sendMonth("2026-10");
    ledger.run(shared(), "2026-11");
    assertEquals(Set.of("Ruth", "Adam"), unbilled(book, ledger));
  }

  @Test
  void no_more_than_the_whole_visit_is_billed_after_a_change_of_owner() {
    WrittenBook ruth = new WrittenBook().visit(ROW + ", Owner: Ruth");
    Ledger ledger = new Ledger().run(ruth, "2026-10").sendMonth("2026-10");
    WrittenBook kim = new WrittenBook().visit(ROW + ", Owner: Kim");
    assertEquals(Set.of(), unbilled(kim, ledger));
  }

  /** Half is billed; of two others of whom each has a half only the first is still within it. */
  @Test
  void so_it_is_where_one_of_two_sharers_was_replaced_by_two() {
    WrittenBook half = shared().visit(ROW);
    Ledger ledger = new Ledger().run(half, "2026-10").without("2026-0001");
    WrittenBook others =
        new WrittenBook()
            .horse("Horse: Bess, Owner: Zoe, Share %: 50")
            .horse("Horse: Bess, Owner: Kim, Share %: 50")
            .visit(ROW);
    assertEquals(Set.of("Zoe"), unbilled(others, ledger));
  }
}

package clenchbook.billing.corrections;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.Ledger;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Which row each billed visit is after the sheet was sorted, shortened or put right. The rules are
 * the program's own: the likest row first, and never another owner's horse.
 */
class VisitMatchingTest {
  private static final String STAR = "Date: 2026-10-05, Horse: Star, Work: Trim, ";

  /**
   * What each row of a book is known by after the register's documents went out, in the order of
   * the rows: {@code ruth 1} for the first row of Ruth's on documents, {@code ruth 2 new} for one
   * that no document names.
   */
  private static List<String> rows(Ledger register, WrittenBook now) {
    Jobs jobs = now.jobs();
    VisitMatching matching = VisitMatching.of(jobs, BilledVisits.issued(register.documentList()));
    List<String> rows = new ArrayList<>();
    for (Job job : jobs.all()) {
      String key = matching.key(job).owner() + " " + matching.key(job).occurrence();
      rows.add(matching.known(job) ? key : key + " new");
    }
    return rows;
  }

  private static Ledger billed(WrittenBook book) {
    return new Ledger().run(book, "2026-10").sendMonth("2026-10");
  }

  private static WrittenBook ruths(String... charges) {
    WrittenBook book = new WrittenBook();
    for (String charge : charges) {
      book.visit(STAR + "Owner: Ruth, Charge: " + charge);
    }
    return book;
  }

  @Test
  void rows_that_stand_as_they_stood_keep_their_keys() {
    assertEquals(List.of("ruth 1", "ruth 2"), rows(billed(ruths("40", "40")), ruths("40", "40")));
  }

  @Test
  void rows_that_changed_places_are_known_by_their_charge() {
    assertEquals(List.of("ruth 2", "ruth 1"), rows(billed(ruths("40", "30")), ruths("30", "40")));
  }

  @Test
  void a_row_deleted_above_is_not_a_change_of_the_one_below() {
    assertEquals(List.of("ruth 2"), rows(billed(ruths("40", "30")), ruths("30")));
  }

  @Test
  void a_row_added_above_is_the_new_one() {
    assertEquals(List.of("ruth 2 new", "ruth 1"), rows(billed(ruths("40")), ruths("30", "40")));
  }

  @Test
  void charges_that_all_changed_are_told_by_their_order() {
    assertEquals(
        List.of("ruth 3", "ruth 2", "ruth 1"),
        rows(billed(ruths("40", "30", "20")), ruths("99", "98", "40")));
  }

  @Test
  void a_row_put_back_where_it_stood_leaves_the_other_its_key() {
    Ledger register = billed(ruths("40", "40"));
    register.correcting(ruths("40"), "2026-10", "2026-0001").sendMonth("2026-10");
    // Of the two alike the second was taken back; the first is known still.
    assertEquals(List.of("ruth 1", "ruth 2 new"), rows(register, ruths("40", "40")));
  }

  @Test
  void another_owners_row_is_not_the_one_that_is_gone() {
    WrittenBook both =
        new WrittenBook()
            .visit(STAR + "Owner: Adam, Charge: 40")
            .visit(STAR + "Owner: Ruth, Charge: 40");
    assertEquals(List.of("ruth 1"), rows(billed(both), ruths("45")));
  }

  @Test
  void an_owner_written_otherwise_is_known_by_the_payer() {
    WrittenBook before =
        new WrittenBook()
            .visit(STAR + "Owner: Ruth, Charge: 40")
            .visit(STAR + "Owner: Zoe, Charge: 40");
    WrittenBook now =
        new WrittenBook()
            .horse("Horse: Star, Owner: Adam, Bill to: Ruth")
            .visit(STAR + "Owner: Kim, Charge: 40")
            .visit(STAR + "Charge: 40");
    assertEquals(List.of("zoe 1", "ruth 1"), rows(billed(before), now));
  }

  @Test
  void of_two_rows_for_one_payer_the_charge_decides() {
    WrittenBook before =
        new WrittenBook()
            .visit(STAR + "Owner: Ruth, Charge: 40")
            .visit(STAR + "Owner: Ruth, Charge: 30");
    WrittenBook now =
        new WrittenBook()
            .horse("Horse: Star, Owner: Adam, Bill to: Ruth")
            .visit(STAR + "Charge: 30")
            .visit(STAR + "Charge: 40");
    assertEquals(List.of("ruth 2", "ruth 1"), rows(billed(before), now));
  }

  @Test
  void of_two_rows_for_others_the_charge_decides_too() {
    WrittenBook now =
        new WrittenBook()
            .visit(STAR + "Owner: Kim, Charge: 30")
            .visit(STAR + "Owner: Kim, Charge: 40");
    assertEquals(List.of("ruth 2", "ruth 1"), rows(billed(ruths("40", "30")), now));
  }

  @Test
  void a_renamed_owner_of_the_only_horse_of_that_name_is_the_same_visit() {
    WrittenBook now = new WrittenBook().visit(STAR + "Owner: Kim, Charge: 45");
    assertEquals(List.of("ruth 1"), rows(billed(ruths("40")), now));
  }

  private static WrittenBook namesakes() {
    return new WrittenBook().horse("Horse: Star, Owner: Adam").horse("Horse: Star, Owner: Ruth");
  }

  @Test
  void of_two_horses_of_one_name_neither_is_the_other() {
    Ledger register = billed(namesakes().visit(STAR + "Owner: Adam, Charge: 40"));
    assertEquals(
        List.of("ruth 1 new"), rows(register, namesakes().visit(STAR + "Owner: Ruth, Charge: 40")));
  }

  @Test
  void a_third_name_on_one_of_them_may_be_either() {
    Ledger register = billed(namesakes().visit(STAR + "Owner: Zoe, Charge: 40"));
    assertEquals(
        List.of("zoe 1"), rows(register, namesakes().visit(STAR + "Owner: Ruth, Charge: 40")));
  }

  @Test
  void an_old_register_knows_a_namesake_by_who_was_billed() {
    WrittenBook both =
        namesakes().visit(STAR + "Owner: Adam, Charge: 40").visit(STAR + "Owner: Ruth, Charge: 40");
    Ledger register = billed(namesakes().visit(STAR + "Owner: Ruth, Charge: 40"));
    register.withoutOwnersOfVisits();
    assertEquals(List.of("adam 1 new", " 1"), rows(register, both));
  }

  @Test
  void so_it_does_where_another_pays_for_the_horse() {
    WrittenBook horses =
        new WrittenBook()
            .horse("Horse: Star, Owner: Adam")
            .horse("Horse: Star, Owner: Ruth, Bill to: Zoe")
            .visit(STAR + "Owner: Adam, Charge: 40")
            .visit(STAR + "Owner: Ruth, Charge: 40");
    Ledger register = billed(horses).without("2026-0001").withoutOwnersOfVisits();
    assertEquals(List.of("adam 1 new", " 1"), rows(register, horses));
  }
}

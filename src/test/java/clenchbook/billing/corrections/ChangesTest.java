package clenchbook.billing.corrections;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.Ledger;
import clenchbook.jobs.WrittenBook;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is said of a visit whose row changed after its invoice went out. The rules are the program's
 * own; the amounts are added up on paper.
 */
class ChangesTest {
  private static final String BESS = "Horse: Bess, Owner: Ruth, Work: Trim, Charge: ";

  private static WrittenBook book() {
    return new WrittenBook().work("Work: Trim, Price: 40").work("Work: Full set, Price: 100");
  }

  private static Ledger sent() {
    return new Ledger()
        .run(book().visit("Date: 2026-10-05, " + BESS + "40"), "2026-10")
        .sendMonth("2026-10");
  }

  private static List<String> differences(Ledger ledger, WrittenBook now) {
    return ledger.run(now, "2026-10").differences();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 45', CHARGE 40.00>45.00",
    "'Date: 2026-10-07, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 40',"
        + " DATE 2026-10-05>2026-10-07",
    "'Date: 2026-11-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 40',"
        + " DATE 2026-10-05>2026-11-05",
    "'Date: 2026-10-05, Horse: Jet, Owner: Ruth, Work: Trim, Charge: 40', HORSE Bess>Jet",
    "'Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Full set, Charge: 40',"
        + " WORK Trim>Full set",
    "'Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Full set, Charge: 45',"
        + " WORK Trim>Full set; CHARGE 40.00>45.00",
    "'Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 40, Reason: cancelled',"
        + " CANCELLED >"
  })
  void a_change_of_the_row_itself_is_to_be_corrected(String row, String change) {
    assertEquals(
        List.of("2026-0001 TO_CORRECT: " + change), differences(sent(), book().visit(row)));
  }

  /** Too late, another owner's, another horse and Work on that day, another day and Work. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'Date: 2026-11-06, Horse: Bess, Owner: Ruth, Work: Trim'",
    "'Date: 2026-10-07, Horse: Bess, Owner: Adam, Work: Trim'",
    "'Date: 2026-10-05, Horse: Jet, Owner: Ruth, Work: Full set'",
    "'Date: 2026-10-06, Horse: Jet, Owner: Ruth, Work: Trim'",
    "'Date: 2026-10-06, Horse: Bess, Owner: Ruth, Work: Full set'"
  })
  void another_visit_is_not_taken_for_a_row_that_is_gone(String row) {
    assertEquals(List.of("2026-0001 TO_CORRECT: GONE >"), differences(sent(), book().visit(row)));
  }

  @Test
  void of_two_rows_the_nearer_one_is_the_visit_that_moved() {
    WrittenBook now =
        book().visit("Date: 2026-10-01, " + BESS + "40").visit("Date: 2026-10-08, " + BESS + "40");
    assertEquals(
        List.of("2026-0001 TO_CORRECT: DATE 2026-10-05>2026-10-08"), differences(sent(), now));
  }

  @Test
  void one_row_is_not_two_visits_that_moved() {
    Ledger ledger =
        new Ledger()
            .run(
                book()
                    .visit("Date: 2026-10-05, " + BESS + "40")
                    .visit("Date: 2026-10-12, " + BESS + "40"),
                "2026-10")
            .sendMonth("2026-10");
    assertEquals(
        List.of("2026-0001 TO_CORRECT: DATE 2026-10-05>2026-10-06", "2026-0001 TO_CORRECT: GONE >"),
        differences(ledger, book().visit("Date: 2026-10-06, " + BESS + "40")));
  }

  @Test
  void a_row_that_another_document_names_is_not_the_visit_that_moved() {
    WrittenBook two =
        book().visit("Date: 2026-10-05, " + BESS + "40").visit("Date: 2026-10-12, " + BESS + "40");
    Ledger ledger = new Ledger().run(two, "2026-10").sendMonth("2026-10");
    assertEquals(
        List.of("2026-0001 TO_CORRECT: GONE >"),
        differences(ledger, book().visit("Date: 2026-10-12, " + BESS + "40")));
  }

  @Test
  void what_changed_outside_the_row_is_only_listed() {
    WrittenBook list = book().visit("Date: 2026-10-05, " + BESS + "list");
    Ledger ledger = new Ledger().run(list, "2026-10").sendMonth("2026-10");
    WrittenBook dearer =
        new WrittenBook().work("Work: Trim, Price: 45").visit("Date: 2026-10-05, " + BESS + "list");
    assertEquals(List.of("2026-0001 LISTED: PRICE 40.00>45.00"), differences(ledger, dearer));
  }

  @Test
  void a_new_payer_and_new_shares_are_listed() {
    String row = "Date: 2026-10-05, Horse: Bess, Work: Trim, Charge: 40";
    WrittenBook half =
        book()
            .horse("Horse: Bess, Owner: Ruth, Share %: 50")
            .horse("Horse: Bess, Owner: Adam, Share %: 50")
            .visit(row);
    WrittenBook quarter =
        book()
            .horse("Horse: Bess, Owner: Ruth, Share %: 25")
            .horse("Horse: Bess, Owner: Adam, Share %: 75")
            .visit(row);
    WrittenBook other =
        book()
            .horse("Horse: Bess, Owner: Ruth, Share %: 50")
            .horse("Horse: Bess, Owner: Zoe, Share %: 50")
            .visit(row);
    Ledger ledger = new Ledger().run(half, "2026-10").sendMonth("2026-10");
    assertEquals(
        List.of("2026-0001 LISTED: SHARE 50, 50>75, 25", "2026-0002 LISTED: SHARE 50, 50>75, 25"),
        differences(ledger, quarter));
    assertEquals(
        List.of(
            "2026-0001 LISTED: OWNER Adam, Ruth>Ruth, Zoe",
            "2026-0002 LISTED: OWNER Adam, Ruth>Ruth, Zoe"),
        differences(ledger, other));
    assertEquals(List.of(), differences(ledger, half));
  }

  /** 33.33 for each of three is the whole, though it adds to 99.99. */
  @Test
  void three_thirds_are_the_whole_visit() {
    String row = "Date: 2026-10-05, Horse: Bess, Work: Trim, Charge: ";
    WrittenBook thirds =
        book()
            .horse("Horse: Bess, Owner: Ruth, Share %: 33.33")
            .horse("Horse: Bess, Owner: Adam, Share %: 33.33")
            .horse("Horse: Bess, Owner: Zoe, Share %: 33.33")
            .visit(row + "40");
    Ledger ledger = new Ledger().run(thirds, "2026-10").sendMonth("2026-10");
    assertEquals(List.of(), differences(ledger, thirds));
    assertEquals(3, ledger.documents().size());
  }

  @Test
  void what_a_difference_is_about_is_told_with_both_amounts() {
    Ledger ledger = sent();
    ledger.run(book().visit("Date: 2026-10-05, " + BESS + "45"), "2026-10");
    Difference difference = ledger.last().differences().get(0);
    assertEquals("Bess", difference.horse());
    assertEquals("Trim", difference.work());
    assertEquals(new BigDecimal("40.00"), difference.billed());
    assertEquals(new BigDecimal("45.00"), difference.now());
    assertEquals("2026-0001|2026-10-05|bess|trim|ruth|1|CHARGE 40.00>45.00", difference.line());
  }

  @Test
  void differences_stand_by_document_then_date_horse_work_and_order() {
    String tenth = "Date: 2026-10-10, Owner: Ruth, Charge: 40, ";
    Ledger ledger =
        new Ledger()
            .run(
                book()
                    .visit(tenth + "Horse: Jet, Work: Trim")
                    .visit(tenth + "Horse: Bess, Work: Trim")
                    .visit(tenth + "Horse: Bess, Work: Trim")
                    .visit(tenth + "Horse: Bess, Work: Full set")
                    .visit("Date: 2026-10-02, " + BESS + "40"),
                "2026-10")
            .sendMonth("2026-10");
    ledger.run(book(), "2026-10");
    assertEquals(
        List.of(
            "2026-10-02|bess|trim|ruth|1",
            "2026-10-10|bess|full set|ruth|1",
            "2026-10-10|bess|trim|ruth|1",
            "2026-10-10|bess|trim|ruth|2",
            "2026-10-10|jet|trim|ruth|1"),
        ledger.last().differences().stream().map(difference -> difference.visit().line()).toList());
  }
}

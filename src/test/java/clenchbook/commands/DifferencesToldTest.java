package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.register.Register;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A difference is told with what changed, where it concerns somebody and not again and again. */
class DifferencesToldTest {
  private static final String VISITS =
      "Date,Owner,Horse,Work,Charge,Paid\n2026-10-05,Ruth,Bess,Trim,,\n"
          + "2026-10-06,Adam,Jet,Full set,,\n2026-10-07,Maeve,Dot,Full set,95,\n"
          + "2026-10-09,,Star,Trim,,\n";
  private static final String RUTH = "2026-10-05,Ruth,Bess,Trim,,";
  private static final String HORSES = "Horse,Owner,Share %\nStar,Ruth,50\nStar,Adam,50\n";

  @TempDir private Path folder;
  private SmallFolderBook book;

  @BeforeEach
  void october_is_out() throws IOException {
    book = SmallFolderBook.in(folder).sheet("Horses", HORSES);
    book.sheet("Visits", VISITS);
    book.monthEnd("2026-10");
    try (Register register = Register.open(book.register())) {
      register.move(
          register.documents().stream().map(BilledDocument::number).toList(), DocumentState.ISSUED);
    }
  }

  private void ruth(String row) throws IOException {
    book.sheet("Visits", VISITS.replace(RUTH, row));
  }

  private Typed run(String month) {
    Typed run = Typed.type("month-end", book.path(), "--month", month);
    assertEquals(0, run.exit(), run.all());
    return run;
  }

  private String page(String month) throws IOException {
    return Files.readString(book.reports().resolve(month).resolve("index.html"));
  }

  private String table(String month) throws IOException {
    return Files.readString(book.reports().resolve(month).resolve("figures/differences.csv"));
  }

  @Test
  void a_changed_date_is_told_as_such() throws IOException {
    ruth("2026-10-06,Ruth,Bess,Trim,,");
    String told =
        "2026-10-05, Bess, Trim: invoice 2026-0003 to Ruth: date 5 Oct → 6 Oct; next month's run"
            + " takes it back, or --correct 2026-0003 now.";
    assertEquals(told, run("2026-10").err().strip());
    assertTrue(page("2026-10").contains("date 5 Oct → 6 Oct"));
    assertTrue(
        table("2026-10").contains(",40.00,40.00,date 2026-10-05 → 2026-10-06\r\n"),
        table("2026-10"));
  }

  @Test
  void a_changed_charge_is_told_with_both_amounts() throws IOException {
    ruth("2026-10-05,Ruth,Bess,Trim,55,");
    assertTrue(run("2026-10").err().contains("charge 40.00 → 55.00;"));
  }

  @Test
  void a_deleted_row_is_told_as_gone() throws IOException {
    ruth("");
    assertTrue(run("2026-10").err().contains("invoice 2026-0003 to Ruth: the row is gone;"));
  }

  @Test
  void a_moved_row_is_not_told_as_gone_while_a_draft_of_another_month_has_it() throws IOException {
    ruth("2026-10-06,Ruth,Bess,Trim,,");
    assertTrue(run("2026-11").err().contains("date 5 Oct → 6 Oct; a credit note of this month"));

    assertFalse(run("2026-12").all().contains("date 5 Oct"), "November has told it");
    assertFalse(table("2026-12").contains("the row is gone"), table("2026-12"));
    Typed october = run("2026-10");
    assertTrue(
        october.err().contains("date 5 Oct → 6 Oct; a draft of another month has it"),
        october.all());
  }

  @Test
  void a_row_that_may_be_held_back_is_told_as_gone_only_once() throws IOException {
    ruth("soon,Ruth,Bess,Trim,,");
    Typed run = Typed.type("month-end", book.path(), "--month", "2026-11");
    assertEquals(1, run.exit(), run.all());
    assertTrue(
        run.err()
            .contains(
                "invoice 2026-0003 to Ruth: the row is gone, but rows of Visits are held back, and"
                    + " it may be one of them: nothing was done. Put those right first."),
        run.all());
  }

  @Test
  void another_sharer_is_told_by_name() throws IOException {
    book.sheet("Horses", HORSES.replace("Adam,50", "Ivo,50"));
    Typed run = run("2026-10");
    assertTrue(run.err().contains("billed to Adam, Ruth → Ivo, Ruth;"), run.all());
    assertEquals(2, run.err().lines().count(), run.all());
  }

  @Test
  void the_first_run_that_finds_it_tells_it_and_other_months_do_not() throws IOException {
    ruth("2026-10-05,Ruth,Bess,Trim,55,");
    Typed first = run("2026-09");
    assertTrue(first.err().contains("charge 40.00 → 55.00"), "found while September was run");
    String page = page("2026-09");
    assertFalse(run("2026-08").all().contains("charge"), "known");
    assertFalse(page("2026-08").contains("charge 40.00"), "known");
    assertFalse(table("2026-08").contains("2026-0003"), "known");
    assertEquals(first.err(), run("2026-09").err(), "the same run again says the same");
    assertEquals(page, page("2026-09"), "and writes the same");
    assertTrue(run("2026-10").err().contains("charge 40.00 → 55.00"), "its own month");
    assertTrue(run("2026-11").err().contains("a credit note of this month"), "the correction's");

    ruth("2026-10-05,Ruth,Bess,Trim,60,");
    assertTrue(run("2026-08").err().contains("charge 40.00 → 60.00"), "changed again");
  }
}

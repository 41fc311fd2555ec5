package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
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

/** No slip with registers restarts the numbers in silence or bills a book's visits again. */
class RegisterGuardTest {
  @TempDir private Path folder;
  private SmallFolderBook book;

  @BeforeEach
  void a_book() throws IOException {
    book = SmallFolderBook.in(folder);
  }

  private Typed october(String... options) {
    return october(book.path(), options);
  }

  private static Typed october(Path of, String... options) {
    String[] words = new String[options.length + 2];
    words[0] = "--month";
    words[1] = "2026-10";
    System.arraycopy(options, 0, words, 2, options.length);
    return Typed.type("month-end", of, words);
  }

  @Test
  void a_run_that_begins_a_register_says_so_with_its_first_number() throws IOException {
    Typed first = october();
    assertEquals(0, first.exit(), first.all());
    assertTrue(
        first
            .out()
            .contains("a register is begun: book.register.db; its first number is 2026-0001"),
        first.all());
    assertFalse(october().all().contains("begun"), "once");
  }

  @Test
  void it_warns_where_payments_name_numbers_that_it_would_give_again() throws IOException {
    book.payments("2026-10-10,Adam,50,2026-0007,\n2026-10-11,Ruth,5,2025-0009,\n");
    Typed first = october();
    assertTrue(
        first
            .err()
            .contains(
                "Payments or invoices of an earlier run name 2026-0007, which this register would"
                    + " give again"),
        first.all());
    assertTrue(first.err().contains("set Next invoice number to 8"), first.all());

    Files.delete(book.register());
    book.sheet("Settings", SmallFolderBook.SETTINGS + "Next invoice number,8\n");
    Typed mended = october("--new-register");
    assertTrue(mended.out().contains("its first number is 2026-0008"), mended.all());
    assertFalse(mended.err().contains("again"), mended.all());
  }

  @Test
  void a_lost_register_is_missed_where_invoices_lie_in_the_reports() throws IOException {
    october();
    Files.delete(book.register());

    Typed lost = october();

    assertEquals(2, lost.exit(), lost.all());
    assertEquals(1, lost.err().lines().count(), lost.all());
    assertTrue(lost.err().contains("invoices of an earlier run lie in"), lost.all());
    assertTrue(lost.err().contains("--register"), lost.all());
    assertTrue(lost.err().contains("Next invoice number to 5"), lost.all());
    assertFalse(Files.exists(book.register()), "none was made");
    assertEquals(2, Typed.type("year-end", book.path(), "--year", "2026").exit());
    Typed begun = october("--new-register");
    assertEquals(0, begun.exit(), begun.all());
    assertTrue(
        begun.err().contains("name 2026-0001, 2026-0002, 2026-0003, 2026-0004, which"),
        begun.all());
    assertEquals(0, october("--new-register").exit(), "and again");
  }

  @Test
  void a_lost_register_is_missed_in_another_folder_of_reports_too() throws IOException {
    String out = folder.resolve("elsewhere").toString();
    october("--out", out);
    Files.delete(book.register());
    assertEquals(2, october("--out", out).exit());
    assertEquals(0, october().exit(), "no sign of an earlier run");
  }

  @Test
  void a_lost_register_is_missed_though_this_runs_reports_go_elsewhere() throws IOException {
    october();
    Files.delete(book.register());
    String out = folder.resolve("elsewhere").toString();

    Typed lost = october("--out", out);

    assertEquals(2, lost.exit(), lost.all());
    assertTrue(lost.err().contains("invoices of an earlier run lie in"), lost.all());
    Typed begun = october("--out", out, "--new-register");
    assertTrue(begun.err().contains("name 2026-0001, 2026-0002"), begun.all());
  }

  @Test
  void a_folder_named_as_the_register_is_called_a_folder() {
    Typed refused = october("--register", folder.toString());
    assertEquals(2, refused.exit(), refused.all());
    assertTrue(refused.err().contains("is a folder, no register"), refused.all());
  }

  @Test
  void a_renamed_book_asks_which_register_is_its() throws IOException {
    october();
    Path renamed = Files.move(book.path(), folder.resolve("farm book"));

    Typed asked = october(renamed);

    assertEquals(2, asked.exit(), asked.all());
    assertEquals(1, asked.err().lines().count(), asked.all());
    assertTrue(asked.err().contains("book.register.db is there"), asked.all());
    assertEquals(0, october(renamed, "--register", book.register().toString()).exit());
    assertFalse(Files.exists(folder.resolve("farm book.register.db")));
    assertEquals(0, october(renamed, "--new-register").exit());
    assertTrue(Files.exists(folder.resolve("farm book.register.db")));
  }

  @Test
  void a_register_named_from_another_folder_is_missed_where_the_book_lies() throws IOException {
    october();
    String elsewhere = folder.resolve("elsewhere/book.register.db").toString();
    Files.createDirectories(folder.resolve("elsewhere"));
    Typed missed = october("--register", elsewhere);
    assertEquals(2, missed.exit(), missed.all());
    assertTrue(missed.err().contains("lies beside the book: " + book.register()), missed.all());
    assertFalse(Files.exists(Path.of(elsewhere)));
    assertEquals(0, october("--register", folder.resolve("another.db").toString()).exit());
  }

  @Test
  void a_month_before_the_opening_date_is_told_of() throws IOException {
    book.sheet("Settings", SmallFolderBook.SETTINGS + "Opening date,2026-11-01\n");
    Typed run = october();
    assertTrue(run.err().contains("2026-10 ends before the Opening date 2026-11-01"), run.all());
    book.sheet("Settings", SmallFolderBook.SETTINGS + "Opening date,2026-10-31\n");
    assertFalse(october().err().contains("Opening date"));
  }

  @Test
  void another_books_register_is_refused_and_left_as_it_is() throws IOException {
    october();
    issue();
    byte[] before = Files.readAllBytes(book.register());
    SmallFolderBook other =
        SmallFolderBook.in(Files.createDirectories(folder.resolve("other")))
            .sheet(
                "Visits",
                "Date,Owner,Horse,Work\n2026-10-05,Nora,Star,Trim\n2026-10-06,Olga,Sun,Trim\n");
    String register = book.register().toString();

    for (String command : new String[] {"month-end", "send"}) {
      Typed refused =
          Typed.type(command, other.path(), "--month", "2026-10", "--register", register);
      assertEquals(2, refused.exit(), refused.all());
      assertEquals(1, refused.err().lines().count(), refused.all());
      assertTrue(refused.err().contains("seems to be another book's"), refused.all());
      assertTrue(refused.err().contains("of 4 visits"), refused.all());
    }
    assertEquals(
        2, Typed.type("year-end", other.path(), "--year", "2026", "--register", register).exit());
    assertArrayEquals(before, Files.readAllBytes(book.register()), "nothing changed");
    assertFalse(Files.exists(other.reports()), "nothing was written");
    assertEquals(0, october(other.path(), "--register", register, "--same-book").exit());
  }

  @Test
  void deleted_moved_cancelled_and_held_rows_are_no_sign_of_another_book() throws IOException {
    october();
    issue();
    // One of four deleted, one moved to another day, one cancelled, one held back.
    book.sheet(
        "Visits",
        "Date,Owner,Horse,Work,Charge,Reason\n2026-10-09,Ruth,Bess,Trim,,\n"
            + "2026-10-06,Adam,Jet,Full set,,cancelled\n2026-10-07,Maeve,Dot,Full set,9x5,\n");
    Typed run = october();
    assertEquals(1, run.exit(), run.all());
  }

  @Test
  void a_row_that_was_moved_and_cancelled_is_no_sign_of_another_book() throws IOException {
    october();
    issue();
    // Of four one is deleted, and two were put on another day and then cancelled.
    book.sheet(
        "Visits",
        "Date,Owner,Horse,Work,Charge,Reason\n2026-10-09,Ruth,Bess,Trim,,cancelled\n"
            + "2026-10-12,Adam,Jet,Full set,,cancelled\n2026-10-07,Maeve,Dot,Full set,95,\n");
    Typed run = october();
    assertEquals(0, run.exit(), run.all());
  }

  @Test
  void a_single_billed_visit_may_have_been_deleted() throws IOException {
    book.sheet("Visits", "Date,Owner,Horse,Work\n2026-10-05,Ruth,Bess,Trim\n");
    october();
    issue();
    book.sheet("Visits", "Date,Owner,Horse,Work\n");
    assertEquals(0, october().exit());
  }

  private void issue() {
    try (Register register = Register.open(book.register())) {
      register.move(
          register.documents().stream().map(BilledDocument::number).toList(), DocumentState.ISSUED);
    }
  }
}

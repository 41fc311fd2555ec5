package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.register.Register;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A correction that can't be made ends the run in one line, and nothing has changed then. */
class CorrectionAskedTest {
  @TempDir private Path folder;
  private SmallFolderBook book;

  /** Adam, Ivo, Maeve and Ruth have October's invoices 2026-0001 to 2026-0004, all out. */
  @BeforeEach
  void october_is_out() throws IOException {
    book = SmallFolderBook.in(folder);
    book.monthEnd("2026-10");
    issue("2026-0001", "2026-0002", "2026-0003", "2026-0004");
  }

  private void issue(String... numbers) {
    try (Register register = Register.open(book.register())) {
      register.move(List.of(numbers), DocumentState.ISSUED);
    }
  }

  private void charge(String row, String charged) throws IOException {
    book.sheet("Visits", SmallFolderBook.VISITS.replace(row, charged));
  }

  private void refused(String month, String number, String because) throws IOException {
    byte[] register = Files.readAllBytes(book.register());
    var files = book.files();
    Typed run = correct(month, number);
    assertEquals(2, run.exit(), run.all());
    assertEquals(1, run.err().lines().count(), run.all());
    assertTrue(run.err().contains(because), run.all());
    assertArrayEquals(register, Files.readAllBytes(book.register()), "nothing changed");
    assertEquals(files, book.files(), "nothing was written");
  }

  private Typed correct(String month, String number) {
    return Typed.type("month-end", book.path(), "--month", month, "--correct", number);
  }

  @Test
  void an_unknown_number_is_refused_and_the_nearest_offered() throws IOException {
    refused("2026-10", "2026-004", "the register holds no invoice 2026-004; is it 2026-0004?");
    refused("2026-10", "77", "the register holds no invoice 77; nothing was done");
  }

  @Test
  void a_draft_is_changed_in_the_book() throws IOException {
    charge(
        "2026-10-05,Ruth,Bess,Trim,,\n",
        "2026-10-05,Ruth,Bess,Trim,,\n2026-11-05,Ruth,Bess,Trim,,\n");
    book.monthEnd("2026-11");
    refused("2026-11", "2026-0005", "2026-0005 is a draft still");
  }

  @Test
  void nothing_to_correct_is_said() throws IOException {
    refused("2026-10", "2026-0004", "the rows of 2026-0004 are as they were billed");
  }

  @Test
  void a_price_list_does_not_change_what_is_out() throws IOException {
    book.sheet("Work", SmallFolderBook.WORK.replace("Trim,40", "Trim,44"));
    refused("2026-10", "2026-0004", "of 2026-0004 only prices, discounts or rates changed");
  }

  @Test
  void a_wrong_owner_is_told_how_to_be_corrected() throws IOException {
    charge("2026-10-05,Ruth,Bess,Trim,,", "2026-10-05,Ivo,Bess,Trim,,");
    refused("2026-10", "2026-0004", "of 2026-0004 only whom it is billed to changed");
  }

  @Test
  void a_row_that_may_be_held_back_is_not_corrected() throws IOException {
    charge("2026-10-05,Ruth,Bess,Trim,,", "2026-10-05,Ruth,Bess,Trim,4x0,");
    refused("2026-10", "2026-0004", "rows of Visits are held back");
  }

  @Test
  void a_credit_note_is_never_dated_before_its_invoice() throws IOException {
    charge("2026-10-05,Ruth,Bess,Trim,,", "2026-10-05,Ruth,Bess,Trim,44,");
    refused("2026-09", "2026-0004", "2026-0004 is of 2026-10, and a credit note is never dated");
  }

  @Test
  void what_can_be_corrected_is_and_then_nothing_is_left_to_correct() throws IOException {
    charge("2026-10-05,Ruth,Bess,Trim,,", "2026-10-05,Ruth,Bess,Trim,44,");
    Typed run = correct("2026-10", "2026-0004");
    assertEquals(0, run.exit(), run.all());
    assertEquals(run.all(), correct("2026-10", "2026-0004").all(), "the same again");
    List<BilledDocument> documents = Register.read(book.register());
    assertEquals("52.80", documents.get(4).gross().toPlainString());
    assertEquals("-48.00", documents.get(5).gross().toPlainString());
    issue("2026-0005", "2026-0006");
    refused("2026-10", "2026-0004", "the rows of 2026-0004 are as they were billed");
    refused("2026-10", "2026-0006", "2026-0006 is a credit note");
  }
}

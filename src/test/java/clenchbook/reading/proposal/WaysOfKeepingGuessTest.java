package clenchbook.reading.proposal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.BookReader;
import clenchbook.reading.ReadOptions;
import clenchbook.reading.SmallBook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ways of keeping visits that need a word in Headings are guessed. */
class WaysOfKeepingGuessTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  @TempDir Path folder;

  private List<Proposal> propose(SmallBook book) throws IOException {
    return BookReader.propose(book.write(folder), ReadOptions.of(Locale.UK));
  }

  private static SmallBook client(SmallBook book, String sheet) {
    book.sheet(sheet, "Date|Horse|Work|Charge");
    for (int row = 0; row < 6; row++) {
      book.row(sheet, DAY.plusDays(row * 7L), row % 2 == 0 ? "Bess" : "Jet", "Trim", 45);
    }
    return book;
  }

  @Test
  void a_sheet_for_each_client_gives_its_owner() throws IOException {
    List<Proposal> rows = propose(client(client(new SmallBook(), "Ruth Ashby"), "Ivo Penhale"));
    assertEquals(2, rows.size(), rows.toString());
    assertEquals("(sheet name)", rows.get(0).mine());
    assertEquals("Owner", rows.get(0).means());
  }

  @Test
  void a_sheet_for_each_month_gives_no_owner() throws IOException {
    List<Proposal> rows = propose(client(client(new SmallBook(), "March"), "April"));
    assertEquals(List.of(), rows);
    assertEquals(List.of(), propose(client(client(new SmallBook(), "Log 1"), "Log 2")));
    assertEquals(List.of(), propose(client(new SmallBook(), "Jottings")));
  }

  @Test
  void a_day_that_is_written_once_is_carried_down() throws IOException {
    SmallBook book = SmallBook.visits("Date|Owner|Horse|Work|Charge");
    for (int row = 0; row < 12; row++) {
      Object day = row % 3 == 0 ? DAY.plusDays(row) : "";
      book.visit(day, row % 2 == 0 ? "Ruth" : "Ivo", "Bess" + row % 4, "Trim", 45);
    }
    List<Proposal> rows = propose(book);
    assertEquals(1, rows.size(), rows.toString());
    assertEquals("Date, carried down", rows.get(0).means());
    assertTrue(rows.get(0).sure() < 90);
  }

  @Test
  void a_day_that_was_forgotten_is_not_carried_down() throws IOException {
    SmallBook book = SmallBook.visits("Date|Owner|Horse|Work|Charge");
    for (int row = 0; row < 12; row++) {
      book.visit(row == 5 || row == 7 ? "" : DAY.plusDays(row), "Ruth", "Bess", "Trim", 45);
    }
    assertEquals(List.of(), propose(book));
  }
}

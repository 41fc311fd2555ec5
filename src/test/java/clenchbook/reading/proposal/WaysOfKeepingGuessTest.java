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

  private static SmallBook daysAbove(SmallBook book, boolean gap) {
    for (int day = 0; day < 2; day++) {
      book.visit(DAY.plusDays(day), day == 0 ? "Ruth" : "Ivo", "Low Barn");
      if (gap) {
        book.visit();
      }
      book.visit("", "", "", "Bess" + day, "Trim", 45);
      book.visit("", "", "", "Jet" + day, "Trim", 45);
    }
    return book;
  }

  private static List<String> meanings(List<Proposal> rows) {
    return rows.stream().map(row -> row.mine() + "=" + row.means()).toList();
  }

  @Test
  void a_row_of_day_owner_and_place_alone_stands_for_the_horses_below() throws IOException {
    SmallBook book = SmallBook.visits("Date|Owner|Place|Horse|Work|Charge");
    assertEquals(
        List.of(
            "Date=Date, carried down", "Owner=Owner, carried down", "Place=Place, carried down"),
        meanings(propose(daysAbove(book, false))));
  }

  @Test
  void a_row_of_day_and_owner_alone_stands_for_its_horses_beside_a_list_of_horses()
      throws IOException {
    SmallBook book = SmallBook.visits("Date|Owner|Place|Horse|Work|Charge");
    book.sheet("Horses", "Horse|Owner")
        .row("Horses", "Bess0", "Ruth")
        .row("Horses", "Jet0", "Ruth");
    assertTrue(meanings(propose(daysAbove(book, false))).contains("Owner=Owner, carried down"));
  }

  @Test
  void a_day_is_not_carried_down_across_a_blank_row() throws IOException {
    SmallBook book = SmallBook.visits("Date|Owner|Place|Horse|Work|Charge");
    assertEquals(List.of(), propose(daysAbove(book, true)));
  }
}

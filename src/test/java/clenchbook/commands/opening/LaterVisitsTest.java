package clenchbook.commands.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.commands.BookCheck;
import clenchbook.commands.SmallFolderBook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The warning for visits dated after the day of the run; common practice, no source. */
class LaterVisitsTest {
  @TempDir private Path folder;

  private List<String> warnings(String today, int visits) throws IOException {
    StringBuilder rows = new StringBuilder("Date,Owner,Horse,Work\n");
    LocalDate first = LocalDate.of(2026, 10, 1);
    for (int day = 0; day < visits; day++) {
      rows.append(first.plusDays(day)).append(",Ruth,Bess,Trim\n");
    }
    SmallFolderBook book = SmallFolderBook.in(folder).sheet("Visits", rows.toString());
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false);
    Machine machine = new Machine(LocalDate.parse(today), Locale.UK, Optional.empty());
    new BookCheck(book.path(), Optional.empty(), Optional.empty(), machine, terminal).run();
    return err.toString(StandardCharsets.UTF_8).lines().toList();
  }

  @Test
  void a_visit_of_today_is_not_late() throws IOException {
    assertEquals(List.of(), warnings("2026-10-03", 3));
  }

  @Test
  void each_of_a_few_is_named_with_its_cell() throws IOException {
    assertEquals(
        List.of(
            "Visits!A3: 2026-10-02 is after today, 2026-10-01",
            "Visits!A4: 2026-10-03 is after today, 2026-10-01"),
        warnings("2026-10-01", 3));
  }

  @Test
  void of_five_none_is_left_unnamed() throws IOException {
    List<String> warnings = warnings("2026-10-01", 6);

    assertEquals(5, warnings.size());
    assertEquals("Visits!A7: 2026-10-06 is after today, 2026-10-01", warnings.get(4));
  }

  @Test
  void of_many_the_first_are_named_and_the_others_counted() throws IOException {
    List<String> warnings = warnings("2026-09-30", 1200);

    assertEquals(6, warnings.size());
    assertEquals("Visits!A2: 2026-10-01 is after today, 2026-09-30", warnings.get(0));
    assertEquals("Visits!A6: 2026-10-05 is after today, 2026-09-30", warnings.get(4));
    assertEquals(
        "1,195 more visits are after today, the last one Visits!A1201: 2030-01-12",
        warnings.get(5));
  }

  @Test
  void one_more_is_said_as_one() throws IOException {
    assertEquals(
        "1 more visit is after today: Visits!A7: 2026-10-06", warnings("2026-09-30", 6).get(5));
  }
}

package clenchbook.reading;

import static clenchbook.reading.Told.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.SheetKind;
import clenchbook.book.understood.UnderstoodColumn;
import clenchbook.texts.InEnglish;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What looks like headings or a list, and is none. */
class LooksLikeTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  @TempDir Path folder;

  private static SmallBook visits() {
    return SmallBook.visits("Date|Owner|Horse|Work|Charge")
        .visit(DAY, "Ann", "Bramble", "Trim", 45);
  }

  /** What the sheets were taken for, where they were read. */
  private static Set<String> takenAs(ReadResult result, String sheet) {
    return result.understood().columns().stream()
        .filter(column -> column.sheet().equals(sheet))
        .map(UnderstoodColumn::takenAs)
        .collect(Collectors.toSet());
  }

  @Test
  void a_row_of_a_price_list_is_no_row_of_headings() {
    ReadResult result =
        visits()
            .sheet("What I take", "Thing|Sort|Quid")
            .row("What I take", "Trim", "job", 36)
            .row("What I take", "Full set", "job", 90)
            .read(folder);
    assertEquals(Set.of(""), takenAs(result, "What I take"));
    assertEquals(List.of(), result.book().work());
  }

  @Test
  void a_row_of_a_sheet_called_work_is_no_row_of_headings_and_what_is_missing_is_said() {
    ReadResult result =
        visits()
            .sheet("Work", "Thing|Sort|Quid")
            .row("Work", "Trim", "job", "£36")
            .row("Work", "Full set", "job", 90)
            .read(folder);
    assertEquals("note HEADING_MISSING Work\n", told(result));
    assertEquals(List.of(), result.book().work());
  }

  @Test
  void headings_may_have_figures_among_them() {
    ReadResult result =
        new SmallBook()
            .sheet("Log", "Date|Owner|Horse|Work|Charge|0|1|2026")
            .row("Log", DAY, "Ann", "Bramble", "Trim", 45, "x")
            .read(folder);
    assertEquals("", told(result));
    assertEquals(1, result.book().visits().size());
  }

  @Test
  void a_log_of_which_only_horses_and_owners_are_known_is_no_list_of_horses() {
    ReadResult result =
        new SmallBook()
            .sheet("Book", "Whenever|Horse|Owner|Did|Dosh")
            .row("Book", DAY, "Bramble", "Ann", "Trim", 45)
            .row("Book", DAY.plusDays(1), "Star", "Ann", "Trim", 45)
            .read(folder);
    assertEquals(Set.of(""), takenAs(result, "Book"));
    assertEquals("note SHEET_MISSING \nnote HEADING_MISSING Book\n", told(result));
    assertTrue(InEnglish.said(result.problems().get(1).problem()).contains("Date and Work"));
  }

  @Test
  void horses_that_come_back_make_a_log_even_where_their_days_cannot_be_read() {
    ReadResult result =
        visits()
            .sheet("Book", "Horse|Owner|Did|Dosh|Whenever")
            .row("Book", "Bramble", "Ann", "Trim", 45, "early")
            .row("Book", "Star", "Ann", "Trim", 45, "late")
            .row("Book", "Bramble", "Ann", "Trim", 45, "Tuesday")
            .read(folder);
    assertEquals(Set.of(""), takenAs(result, "Book"));
    assertEquals(0, result.book().horses().size());
  }

  @Test
  void a_list_of_horses_may_say_when_each_was_born_and_who_shares_it() {
    ReadResult result =
        visits()
            .sheet("My ponies", "Horse|Owner|Share %|Born")
            .row("My ponies", "Bramble", "Ann", 50, DAY.minusYears(9))
            .row("My ponies", "Bramble", "Bob", 50, DAY.minusYears(9))
            .row("My ponies", "Star", "Bob", "", DAY.minusYears(5))
            .read(folder);
    assertEquals("", told(result));
    assertEquals(3, result.book().horses().size());
  }

  @Test
  void a_sheet_that_lacks_one_heading_of_visits_is_named_beside_others_that_lack_none() {
    ReadResult result =
        visits()
            .sheet("April", "Date|Owner|Horse|Thingamy|Charge")
            .row("April", DAY.plusMonths(1), "Ann", "Bramble", "Trim", 45)
            .read(folder);
    assertEquals("note HEADING_MISSING April\n", told(result));
    assertTrue(
        InEnglish.said(result.problems().get(0).problem())
            .contains("no row holds the heading Work"));
    assertEquals(Set.of(SheetKind.VISITS), result.book().present());
  }

  @Test
  void a_diary_of_the_farriers_own_is_left_alone() {
    ReadResult result =
        visits()
            .sheet("Vet", "Date|Horse|Vet|Notes")
            .row("Vet", DAY, "Bramble", "Mr Elm", "lame")
            .sheet("To do", "What|When")
            .row("To do", "rasps", DAY)
            .read(folder);
    assertEquals("", told(result));
  }
}

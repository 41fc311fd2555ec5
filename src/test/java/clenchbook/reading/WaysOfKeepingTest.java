package clenchbook.reading;

import static clenchbook.reading.Told.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.SheetControl;
import clenchbook.book.Visit;
import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The ways in which farriers keep their books. */
class WaysOfKeepingTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  @TempDir Path folder;

  private static String visits(ReadResult result) {
    StringBuilder all = new StringBuilder();
    for (Visit visit : result.book().visits()) {
      all.append(visit.date()).append(' ').append(visit.owner()).append(' ');
      all.append(visit.horse()).append(' ').append(visit.work()).append(' ');
      all.append(visit.charge().map(Object::toString).orElse("-")).append('\n');
    }
    return all.toString();
  }

  @Test
  void a_sheet_for_each_client_gives_its_name_as_the_owner() {
    ReadResult result =
        new SmallBook()
            .sheet("Ann Ash", "Date|Horse|Work|Charge")
            .row("Ann Ash", DAY, "Bramble", "Trim", 45)
            .sheet("Bob Birch", "Date|Horse|Work|Charge")
            .row("Bob Birch", DAY, "Star", "Trim", 50)
            .sheet("Prices", "Work|Price")
            .row("Prices", "Trim", 45)
            .sheet("Headings", "Sheet|Mine|Means")
            .row("Headings", "*", "(sheet name)", "Owner")
            .read(folder);
    assertEquals("", told(result));
    assertEquals(
        """
        2026-03-14 Ann Ash Bramble Trim 45
        2026-03-14 Bob Birch Star Trim 50
        """,
        visits(result));
  }

  @Test
  void a_sheet_for_each_horse_needs_no_column_of_horses() {
    ReadResult result =
        new SmallBook()
            .sheet("Bramble", "Date|Owner|Work|Charge")
            .row("Bramble", DAY, "Ann", "Trim", 45)
            .sheet("Headings", "Sheet|Mine|Means")
            .row("Headings", "*", "(sheet name)", "Horse")
            .read(folder);
    assertEquals("", told(result));
    assertEquals("2026-03-14 Ann Bramble Trim 45\n", visits(result));
  }

  @Test
  void a_date_written_once_stands_over_its_horses_and_not_across_a_blank_row() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit(DAY, "Ann", "Bramble", "Trim", 45)
            .visit("", "", "Star", "Trim", 45)
            .visit(DAY.plusDays(1))
            .visit("", "Bob", "Comet", "Trim", 50)
            .visit()
            .visit("", "Bob", "Dot", "Trim", 50)
            .sheet("Headings", "Sheet|Mine|Means")
            .row("Headings", "Visits", "Date", "Date, carried down")
            .row("Headings", "Visits", "Owner", "Owner, carried down")
            .read(folder);
    assertEquals("held DATE_MISSING Visits!A7\n", told(result));
    assertEquals(
        """
        2026-03-14 Ann Bramble Trim 45
        2026-03-14 Ann Star Trim 45
        2026-03-15 Bob Comet Trim 50
        """,
        visits(result));
    assertEquals(new SheetControl("Visits", 5, 1), result.book().controls().get(0));
  }

  @Test
  void a_total_below_carried_days_is_a_total() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit(DAY, "Ann", "Bramble", "Trim", 45)
            .visit("", "", "Star", "Trim", 45)
            .visit("", "Total", "", "", 90)
            .sheet("Headings", "Sheet|Mine|Means")
            .row("Headings", "*", "Date", "Date, carried down")
            .row("Headings", "*", "Owner", "Owner, carried down")
            .read(folder);
    assertEquals("", told(result));
    assertEquals(2, result.book().visits().size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"March 2026", "2026-03", "03.2026", "März 26", "mars 2026", "Mrt 2026"})
  void day_numbers_belong_to_the_month_of_the_sheets_name(String sheet) {
    ReadResult result =
        new SmallBook()
            .sheet(sheet, "Date|Owner|Horse|Work|Charge")
            .row(sheet, 14, "Ann", "Bramble", "Trim", 45)
            .row(sheet, "Sat 14th", "Ann", "Star", "Trim", 45)
            .row(sheet, "14.", "Ann", "Dot", "Trim", 45)
            .read(folder);
    assertEquals("", told(result));
    assertTrue(result.book().visits().stream().allMatch(visit -> visit.date().equals(DAY)));
    assertEquals(3, result.book().visits().size());
  }

  @Test
  void a_title_may_give_the_month_and_the_name_the_year() {
    ReadResult result =
        new SmallBook()
            .row("2026", "Horses shod in March")
            .sheet("2026", "Date|Owner|Horse|Work|Charge")
            .row("2026", 14, "Ann", "Bramble", "Trim", 45)
            .read(folder);
    assertEquals("", told(result));
    assertEquals("2026-03-14 Ann Bramble Trim 45\n", visits(result));
  }

  @Test
  void a_day_number_without_month_and_year_holds_its_row() {
    ReadResult result =
        new SmallBook()
            .sheet("March", "Date|Owner|Horse|Work|Charge")
            .row("March", 14, "Ann", "Bramble", "Trim", 45)
            .sheet("April 2026", "Date|Owner|Horse|Work|Charge")
            .row("April 2026", 31, "Ann", "Bramble", "Trim", 45)
            .read(folder);
    assertEquals(
        "held DATE_UNREADABLE March!A2\nheld DATE_UNREADABLE April 2026!A2\n", told(result));
  }

  @Test
  void a_second_heading_row_begins_another_table() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit(DAY, "Ann", "Bramble", "Trim", 45)
            .visit()
            .visit("What I charge")
            .visit("Work", "Price")
            .visit("Trim", 40)
            .visit()
            .visit("Day", "Horse", "Owner", "Job", "Fee")
            .visit(DAY, "Star", "Bob", "Trim", 55)
            .read(folder);
    assertEquals("", told(result));
    assertEquals(
        """
        2026-03-14 Ann Bramble Trim 45
        2026-03-14 Bob Star Trim 55
        """,
        visits(result));
    assertEquals(1, result.book().work().size());
    assertEquals(List.of(new SheetControl("Visits", 6, 3)), result.book().controls());
  }

  @Test
  void a_second_heading_row_far_down_begins_another_table_too() {
    SmallBook book = SmallBook.visits("Date|Owner|Horse|Work|Charge");
    for (int row = 0; row < 150; row++) {
      book.visit(DAY, "Ann", "Bramble " + row, "Trim", 45);
    }
    book.visit("April").visit("Horse", "Owner", "Date", "Work", "Charge");
    book.visit("Star", "Bob", DAY, "Trim", 55);
    book.visit("Date", "Owner", "Amount").visit(DAY, "Ann", 45);
    ReadResult result = book.read(folder);
    assertEquals("", told(result));
    assertEquals(151, result.book().visits().size());
    assertEquals("Bob", result.book().visits().get(150).owner());
    assertEquals(1, result.book().payments().size());
    assertEquals(List.of(new SheetControl("Visits", 155, 3)), result.book().controls());
  }

  @Test
  void a_list_further_down_that_another_sheet_holds_is_said_and_not_read() {
    SmallBook book = SmallBook.visits("Date|Owner|Horse|Work|Charge");
    for (int row = 0; row < 150; row++) {
      book.visit(DAY, "Ann", "Bramble " + row, "Trim", 45);
    }
    book.visit("Work", "Price").visit("Trim", 40);
    book.sheet("Work", "Work|Price").row("Work", "Trim", 45);
    ReadResult result = book.read(folder);
    assertEquals("note SHEET_IGNORED Visits, row 152\n", told(result));
    assertEquals(1, result.book().work().size());
  }

  @Test
  void two_tables_side_by_side_are_two_tables() {
    ReadResult result =
        new SmallBook()
            .sheet("2026", "Date|Owner|Horse|Work|Charge||Work|Price")
            .row("2026", DAY, "Ann", "Bramble", "Trim", "", "", "Trim", 40)
            .row("2026", DAY, "Bob", "Star", "Full set", "", "", "Full set", 110)
            .row("2026", "", "", "", "", "", "", "Call-out", 20)
            .row("2026", DAY, "Bob", "Dot", "Trim", 30)
            .read(folder);
    assertEquals("", told(result));
    assertEquals(
        """
        2026-03-14 Ann Bramble Trim -
        2026-03-14 Bob Star Full set -
        2026-03-14 Bob Dot Trim 30
        """,
        visits(result));
    assertEquals(3, result.book().work().size());
    assertEquals(List.of(new SheetControl("2026", 4, 0)), result.book().controls());
  }

  @Test
  void an_empty_column_within_one_table_parts_nothing() {
    ReadResult result =
        new SmallBook()
            .sheet("2026", "Date|Owner|Horse||Work|Charge")
            .row("2026", DAY, "Ann", "Bramble", "", "Trim", 45)
            .read(folder);
    assertEquals("", told(result));
    assertEquals("2026-03-14 Ann Bramble Trim 45\n", visits(result));
  }

  @Test
  void a_column_that_is_left_out_is_left_out_without_a_word() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge|Sum")
            .visit(DAY, "Ann", "Bramble", "Trim", 45, 90)
            .sheet("Headings", "Sheet|Mine|Means")
            .row("Headings", "Visits", "Sum", "not read")
            .read(folder);
    assertEquals("", told(result));
  }

  @Test
  void a_column_of_money_or_minutes_that_nobody_reads_warns() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Quid|Mins it took|Total|Age|Balance|No|Colour")
            .visit(DAY, "Ann", "Bramble", "Trim", 45, 25, 150, 12, 45, 1, "bay")
            .visit(DAY, "Ann", "Star", "Trim", 60, 35, 160, 8, 105, 2, "grey")
            .sheet("Work", "Work|Price")
            .row("Work", "Trim", 40)
            .read(folder);
    assertEquals(
        """
        warning COLUMN_NOT_READ Visits!E1
        warning COLUMN_NOT_READ Visits!F1
        warning COLUMN_NOT_READ Visits!G1
        warning COLUMN_NOT_READ Visits!I1
        """,
        told(result));
  }

  @Test
  void a_running_balance_beside_charges_is_left_alone() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge|Paid|Balance")
            .visit(DAY, "Ann", "Bramble", "Trim", 45, "", 45)
            .visit(DAY, "Ann", "Star", "Trim", 60, 45, 60)
            .read(folder);
    assertEquals("", told(result));
  }

  @Test
  void prices_typed_in_the_row_need_no_list() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|£")
            .visit(DAY, "Ann", "Bramble", "Trim", 45)
            .read(folder);
    assertEquals("", told(result));
    assertEquals("2026-03-14 Ann Bramble Trim 45\n", visits(result));
  }

  @Test
  void paid_in_words_is_in_full_or_not_at_all() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge|Paid")
            .visit(DAY, "Ann", "Bramble", "Trim", 45, "yes")
            .visit(DAY, "Ann", "Star", "Trim", 45, "no")
            .visit(DAY, "Ann", "Dot", "Trim", 45, true)
            .visit(DAY, "Ann", "Elf", "Trim", 45, 1)
            .visit(DAY, "Ann", "Fay", "Trim", 45, "bezahlt")
            .visit(DAY, "Ann", "Gus", "Trim", 45, "-")
            .read(folder);
    assertEquals("", told(result));
    StringBuilder told = new StringBuilder();
    result
        .book()
        .visits()
        .forEach(
            visit ->
                told.append(
                        visit.paidInFull() ? "full" : visit.paid().map(String::valueOf).orElse("-"))
                    .append(' '));
    assertEquals("full - full 1 full - ", told.toString());
  }

  @Test
  void dots_put_the_day_first() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit("3.4.2026", "Ann", "Bramble", "Trim", 45)
            .visit("Fr. 03.04.26", "Ann", "Star", "Trim", 45)
            .visit("3/4/2026", "Ann", "Dot", "Trim", 45)
            .read(folder);
    assertEquals("held DATE_AMBIGUOUS Visits!A4\n", told(result));
    assertEquals(LocalDate.of(2026, 4, 3), result.book().visits().get(0).date());
    assertEquals(LocalDate.of(2026, 4, 3), result.book().visits().get(1).date());
  }

  @Test
  void three_days_that_can_be_read_in_one_order_only_settle_their_column() {
    SmallBook book =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit("3/4/2026", "Ann", "Bramble", "Trim", 45)
            .visit("13/4/2026", "Ann", "Bramble", "Trim", 45)
            .visit("24/4/2026", "Ann", "Bramble", "Trim", 45);
    assertEquals("held DATE_AMBIGUOUS Visits!A2\n", told(book.read(folder)));
    ReadResult settled = book.visit("25/4/2026", "Ann", "Bramble", "Trim", 45).read(folder);
    assertEquals("", told(settled));
    assertEquals(LocalDate.of(2026, 4, 3), settled.book().visits().get(0).date());
    assertTrue(
        settled.understood().columns().stream()
            .anyMatch(
                column ->
                    InEnglish.said(column.note()).startsWith("day first, by 3 of its own days")));
    ReadResult mixed = book.visit("4/25/2026", "Ann", "Bramble", "Trim", 45).read(folder);
    assertEquals("held DATE_AMBIGUOUS Visits!A2\n", told(mixed));
  }

  @Test
  void a_single_file_is_a_book_of_one_sheet() throws IOException {
    Path file = folder.resolve("Visites 2026.csv");
    Files.writeString(
        file, "Date;Client;Cheval;Travail;Prix\n14/03/2026;Ann;Bramble;Parage;45,50\n");
    ReadResult result = BookReader.read(file, ReadOptions.of(Locale.FRANCE));
    assertEquals("", told(result));
    assertEquals("2026-03-14 Ann Bramble Parage 45.5\n", visits(result));
    assertEquals("Visites 2026", result.book().controls().get(0).sheet());
  }

  @Test
  void a_file_beside_the_book_serves_as_its_headings() throws IOException {
    SmallBook book =
        SmallBook.visits("Day|Who|Beast|Did|Quid|Bits")
            .visit(DAY, "Ann", "Bramble", "Trim", 45, "pads");
    Path file = book.write(folder);
    Files.writeString(
        folder.resolve("book.headings.csv"),
        "Sheet,Mine,Means,Sure,Why\nVisits,Who,Owner,90,x\nVisits,Beast,Horse,90,x\n"
            + "Visits,Did,Work,90,x\n*,Quid,Charge,90,x\nVisits,Bits,,40,x\n");
    ReadResult result = BookReader.read(file, ReadOptions.of(Locale.UK));
    assertEquals("", told(result));
    assertEquals("2026-03-14 Ann Bramble Trim 45\n", visits(result));
    assertEquals(Optional.of("book.headings.csv"), result.understood().headingsFile());
  }

  @Test
  void a_sheet_headings_goes_before_the_file_beside_the_book() throws IOException {
    SmallBook book =
        SmallBook.visits("Date|Owner|Horse|Work|Quid|Pence")
            .visit(DAY, "Ann", "Bramble", "Trim", 45, 46)
            .sheet("Headings", "Sheet|Mine|Means")
            .row("Headings", "Visits", "Quid", "Charge")
            .row("Headings", "Visits", "Pence", "not read");
    Path file = book.write(folder);
    Path other = folder.resolve("book.headings.csv");
    Files.writeString(other, "Sheet,Mine,Means\nVisits,Pence,Charge\nVisits,Quid,not read\n");
    ReadResult result = BookReader.read(file, ReadOptions.of(Locale.UK));
    assertEquals("2026-03-14 Ann Bramble Trim 45\n", visits(result));
    assertEquals(Optional.empty(), result.understood().headingsFile());
    ReadOptions asked =
        new ReadOptions(Optional.empty(), Locale.UK, Optional.of(other), rows -> {});
    assertEquals("2026-03-14 Ann Bramble Trim 46\n", visits(BookReader.read(file, asked)));
  }
}

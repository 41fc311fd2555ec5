package clenchbook.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.schedule.due.UsualVisit;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class DueListTest {

  private static final YearMonth OCTOBER = YearMonth.of(2026, 10);

  private final WrittenBook book =
      new WrittenBook()
          .place("Place: Hill, Address: 1 Hill Lane, Drive min: 20")
          .place("Place: Mill, Drive min: 10")
          .horse("Horse: Bess, Owner: Ann, Place: Hill, Interval weeks: 6, Notes: kicks")
          .horse("Horse: Dun, Owner: Bob, Place: Hill, Interval weeks: 5")
          .horse("Horse: Fly, Owner: Cid, Place: Mill, Interval weeks: 6")
          .material("Item: Keg front, Kind: keg, Size: 0, Unit cost: 4")
          .material("Item: Keg hind, Kind: keg, Unit cost: 4")
          .material("Item: E5, Kind: nail, Unit cost: 0.1")
          .material("Item: Pad, Kind: pad, Unit cost: 5");

  @Test
  void the_due_table_starts_with_the_columns_asked_for() {
    book.visit(set("2026-09-14", "Bess"));
    FigureTable due = table("due");
    assertEquals(
        List.of("horse", "owner", "place", "last", "interval_weeks", "due", "days_overdue"),
        due.columns().subList(0, 7));
    assertEquals(
        List.of("Bess", "Ann", "Hill", "2026-09-14", "6", "2026-10-26", "5"),
        due.rows().get(0).subList(0, 7));
  }

  @Test
  void the_horse_sheet_tells_what_was_put_on_last_time() {
    book.visit(
        "Date: 2026-10-05, Horse: Bess, Work: Full set, Shoe: Keg front: 2; Keg hind: 2,"
            + " Size: 0: 2; 00: 2, Shoes: 4, Nails: 28, Nail: E5, Extras: Pads: 2,"
            + " Shaping: hot, Notes: left hind flares");
    FigureTable horses = table("horses");
    assertEquals(
        List.of(
            "horse", "owner", "place", "last", "work", "shoe", "size", "shoes", "nails", "extras",
            "notes", "due"),
        horses.columns().subList(0, 12));
    assertEquals(
        List.of(
            "Bess",
            "Ann",
            "Hill",
            "2026-10-05",
            "Full set",
            "Keg front: 2; Keg hind: 2",
            "0: 2; 00: 2",
            "4",
            "28",
            "Pad: 2",
            "left hind flares",
            "2026-11-16",
            "kicks",
            "E5",
            "hot"),
        horses.rows().get(0));
  }

  @Test
  void the_calendar_has_one_event_for_each_place_and_due_week() {
    book.visit(set("2026-10-05", "Bess")) // due Mon 16 Nov
        .visit(set("2026-10-14", "Dun")) // due Wed 18 Nov
        .visit(set("2026-10-08", "Fly")); // due Thu 19 Nov
    List<VEvent> events = Biweekly.parse(findings().calendar()).first().getEvents();
    assertEquals(2, events.size());
    VEvent hill =
        events.stream().filter(e -> place(e).startsWith("Hill")).findFirst().orElseThrow();
    assertEquals("Hill: 2 horses due", hill.getSummary().getValue());
    assertEquals("Hill, 1 Hill Lane", place(hill));
    String lines = hill.getDescription().getValue();
    assertTrue(lines.startsWith("Bess (Ann): due 2026-11-16, Set, about 60 min"), lines);
    assertTrue(lines.contains("\nDun (Bob): due 2026-11-18"), lines);
    assertFalse(hill.getDateStart().getValue().hasTime());
  }

  @Test
  void what_is_overdue_stands_in_the_calendar_on_no_day_that_is_over() {
    book.visit(set("2026-09-01", "Bess")).visit(set("2026-09-19", "Fly")); // due 13 and 31 October
    List<VEvent> events = Biweekly.parse(findings().calendar()).first().getEvents();
    assertEquals(2, events.size());
    for (VEvent event : events) {
      assertEquals("2026-11-01", day(event), event.getSummary().getValue());
      assertTrue(event.getDescription().getValue().contains(": due 2026-10-"));
    }
  }

  private static String day(VEvent event) {
    return DateTimeFormatter.ISO_LOCAL_DATE.format(
        LocalDate.ofInstant(
            Instant.ofEpochMilli(event.getDateStart().getValue().getTime()),
            ZoneId.systemDefault()));
  }

  @Test
  void importing_twice_or_next_months_calendar_updates_and_never_doubles() {
    book.visit(set("2026-10-05", "Bess")).visit(set("2026-10-14", "Dun"));
    Map<String, VEvent> phone = new TreeMap<>();
    take(phone, findings().calendar());
    take(phone, findings().calendar());
    assertEquals(1, phone.size());
    book.visit(set("2026-11-20", "Fly"));
    take(phone, DueList.of(book.jobs(), OCTOBER.plusMonths(1)).calendar());
    assertEquals(2, phone.size());
    VEvent hill =
        phone.values().stream().filter(e -> place(e).startsWith("Hill")).findFirst().orElseThrow();
    assertEquals(9830, hill.getSequence().getValue());
  }

  @Test
  void the_calendar_is_the_same_every_time() {
    book.visit(set("2026-10-05", "Bess")).visit(set("2026-10-14", "Dun"));
    assertEquals(findings().calendar(), findings().calendar());
  }

  @Test
  void the_weeks_ahead_add_up_the_usual_minutes_and_the_way() {
    // The list is of Saturday 31 October: the Sunday after it stands with the week that follows.
    book.visit(set("2026-09-14", "Bess")) // overdue: first week
        .visit(set("2026-10-01", "Dun")) // due 5 Nov, first week
        .visit(set("2026-10-05", "Fly")); // due 16 Nov, the third whole week
    List<List<String>> weeks = table("due-weeks").rows();
    assertEquals(
        List.of("week", "2026-11-01", "2026-11-08", "2", "1", "2.0", "0.7", "2.7", "measured"),
        weeks.get(0).subList(0, 9));
    assertEquals("1.3", weeks.get(2).get(7));
    assertEquals(
        List.of("four weeks", "2026-11-01", "2026-11-29", "3", "", "3.0", "1.0", "4.0"),
        weeks.get(4).subList(0, 8));
  }

  @Test
  void days_over_the_limit_of_horses_are_named() {
    book.setting(Setting.HORSES_PER_DAY_LIMIT, "1")
        .visit(set("2026-10-05", "Bess"))
        .visit(set("2026-10-05", "Fly"));
    assertEquals("2026-11-16: 2", table("due-weeks").rows().get(2).get(10));
    assertEquals("2", table("due-weeks").rows().get(2).get(9));
  }

  @Test
  void horses_of_one_place_due_within_a_week_are_one_round_with_its_neighbours() {
    book.visit(set("2026-08-20", "Bess"))
        .visit(set("2026-08-20", "Fly"))
        .visit(set("2026-10-05", "Bess"))
        .visit(set("2026-10-05", "Fly"))
        .visit(set("2026-10-14", "Dun"));
    List<List<String>> rounds = table("rounds").rows();
    assertEquals(
        List.of("Hill", "2026-11-16", "2026-11-18", "2", "Bess; Dun", "120", "Mill"),
        rounds.get(0));
    assertEquals(
        List.of("Mill", "2026-11-16", "2026-11-16", "1", "Fly", "60", "Hill"), rounds.get(1));
  }

  @Test
  void the_usual_work_is_the_most_frequent_of_late_and_takes_its_median() {
    book.visit(set("2026-06-01", "Bess") + ", Total min: 50")
        .visit(set("2026-07-13", "Bess") + ", Total min: 70")
        .visit("Date: 2026-08-24, Horse: Bess, Work: Trim, Total min: 20")
        .visit(set("2026-10-05", "Bess") + ", Total min: 54");
    UsualVisit usual = UsualVisit.of(findings().dates().horses().get(0));
    assertEquals("Set", usual.workNames());
    assertEquals(0, new BigDecimal("54").compareTo(usual.workMinutes()));
    assertEquals(LocalDate.of(2026, 10, 5), usual.rows().get(0).date());
  }

  @Test
  void a_horse_gone_quiet_is_listed_apart_and_leaves_the_calendar() {
    book.visit(set("2026-05-01", "Bess")).visit(set("2026-10-05", "Fly"));
    DueFindings findings = findings();
    assertFalse(findings.calendar().contains("Bess"));
    boolean named =
        findings.full().stream()
            .anyMatch(block -> block instanceof Block.Heading h && h.text().equals("Gone quiet"));
    assertTrue(named);
    assertEquals("gone quiet", table("due").rows().get(0).get(7));
  }

  @Test
  void a_book_without_visits_still_gives_every_table() {
    DueFindings findings = findings();
    assertEquals(5, findings.tables().size());
    assertTrue(table("due").rows().isEmpty());
    assertTrue(findings.calendar().startsWith("BEGIN:VCALENDAR\r\n"));
  }

  private static String set(String day, String horse) {
    return "Date: " + day + ", Work: Set, Total min: 60, Horse: " + horse;
  }

  private static void take(Map<String, VEvent> phone, String calendar) {
    ICalendar read = Biweekly.parse(calendar).first();
    for (VEvent event : read.getEvents()) {
      VEvent held = phone.get(event.getUid().getValue());
      if (held == null || held.getSequence().getValue() <= event.getSequence().getValue()) {
        phone.put(event.getUid().getValue(), event);
      }
    }
  }

  private static String place(VEvent event) {
    return event.getLocation().getValue();
  }

  private DueFindings findings() {
    return DueList.of(book.jobs(), OCTOBER);
  }

  private FigureTable table(String name) {
    return findings().tables().stream()
        .filter(t -> t.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}

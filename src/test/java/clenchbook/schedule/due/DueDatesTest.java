package clenchbook.schedule.due;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.jobs.HorseId;
import clenchbook.jobs.WrittenBook;
import clenchbook.schedule.due.VisitInterval.Source;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DueDatesTest {

  private static final LocalDate OCTOBER = LocalDate.of(2026, 10, 31);

  private final WrittenBook book = new WrittenBook();

  @Test
  void the_given_interval_counts_from_the_last_visit() {
    book.horse("Horse: Bess, Owner: Ann, Place: Hill, Interval weeks: 6")
        .visit("Date: 2026-09-01, Horse: Bess, Work: Set")
        .visit("Date: 2026-10-05, Horse: Bess, Work: Set");
    DueHorse bess = only();
    assertEquals(LocalDate.of(2026, 11, 16), bess.due());
    assertEquals(Source.GIVEN, bess.interval().source());
    assertEquals("6", bess.interval().weeks());
    assertEquals("Hill", bess.place());
    assertEquals(0, bess.daysOverdue());
  }

  @Test
  void half_weeks_count_in_days() {
    book.horse("Horse: Bess, Owner: Ann, Interval weeks: 6.5")
        .visit("Date: 2026-10-01, Horse: Bess, Work: Set");
    assertEquals(LocalDate.of(2026, 11, 16), only().due());
    assertEquals("6.5", only().interval().weeks());
  }

  @Test
  void without_an_interval_the_median_of_its_own_visits_counts_and_is_named() {
    book.visit("Date: 2026-06-01, Owner: Ann, Horse: Bess, Work: Set")
        .visit("Date: 2026-07-11, Owner: Ann, Horse: Bess, Work: Set")
        .visit("Date: 2026-08-22, Owner: Ann, Horse: Bess, Work: Set")
        .visit("Date: 2026-10-20, Owner: Ann, Horse: Bess, Work: Set");
    DueHorse bess = only();
    assertEquals(Source.OWN_MEDIAN, bess.interval().source());
    assertEquals(42, bess.interval().days());
    assertEquals(LocalDate.of(2026, 12, 1), bess.due());
  }

  @Test
  void a_horse_seen_once_takes_the_median_of_all_horses_and_a_first_book_six_weeks() {
    book.visit("Date: 2026-10-01, Owner: Ann, Horse: Bess, Work: Set");
    assertEquals(Source.SIX_WEEKS, only().interval().source());
    assertEquals(42, only().interval().days());
    book.visit("Date: 2026-09-01, Owner: Bob, Horse: Dun, Work: Set")
        .visit("Date: 2026-10-20, Owner: Bob, Horse: Dun, Work: Set");
    assertEquals(Source.BOOK_MEDIAN, named("Bess").interval().source());
    assertEquals(49, named("Bess").interval().days());
  }

  @Test
  void a_lost_shoe_call_a_fee_and_a_cancelled_visit_do_not_move_the_date() {
    book.horse("Horse: Bess, Owner: Ann, Interval weeks: 6")
        .work("Work: No-show, Kind: fee, Price: 20")
        .visit("Date: 2026-09-01, Horse: Bess, Work: Set")
        .visit("Date: 2026-09-20, Horse: Bess, Work: One shoe, Reason: lost shoe")
        .visit("Date: 2026-09-21, Horse: Bess, Work: No-show")
        .visit("Date: 2026-09-22, Horse: Bess, Work: Set, Reason: cancelled")
        .visit("Date: 2026-11-02, Horse: Bess, Work: Set");
    DueHorse bess = only();
    assertEquals(LocalDate.of(2026, 9, 1), bess.last());
    assertEquals(LocalDate.of(2026, 10, 13), bess.due());
    assertEquals(18, bess.daysOverdue());
    assertEquals("overdue", bess.state());
    assertEquals(LocalDate.of(2026, 9, 20), bess.lastSeen());
  }

  @Test
  void a_horse_not_seen_for_two_intervals_has_gone_quiet() {
    book.horse("Horse: Bess, Owner: Ann, Interval weeks: 4")
        .visit("Date: 2026-09-05, Horse: Bess, Work: Set");
    assertEquals("gone quiet", only().state());
    assertEquals(Optional.empty(), dates().next(new HorseId("Bess", "Ann")));
    assertTrue(dates().expected().isEmpty());
    assertEquals(1, dates().goneQuiet().size());
    book.visit("Date: 2026-09-06, Horse: Bess, Work: One shoe, Reason: lost shoe");
    assertEquals("overdue", only().state());
    assertEquals(Optional.of(LocalDate.of(2026, 10, 3)), dates().next(new HorseId("Bess", "Ann")));
  }

  @Test
  void sold_and_dead_horses_never_stand_in_the_list() {
    book.horse("Horse: Dead, Owner: Ann, Interval weeks: 6, Until: 2026-10-20")
        .horse("Horse: Sold at month end, Owner: Ann, Interval weeks: 6, Until: 2026-10-31")
        .horse("Horse: Sold before due, Owner: Ann, Interval weeks: 6, Until: 2026-11-10")
        .horse("Horse: Sold later, Owner: Ann, Interval weeks: 6, Until: 2026-12-31");
    for (String name : List.of("Dead", "Sold at month end", "Sold before due", "Sold later")) {
      book.visit("Date: 2026-10-05, Work: Set, Horse: " + name);
    }
    assertEquals(List.of("Sold later"), dates().horses().stream().map(h -> h.id().name()).toList());
  }

  @Test
  void a_horse_sold_on_keeps_its_date_and_stands_under_its_new_owner() {
    book.horse("Horse: Bess, Owner: Ann, Place: Hill, Interval weeks: 6, Until: 2026-10-15")
        .horse("Horse: Bess, Owner: Bob, Place: Mill, Interval weeks: 8, From: 2026-10-16")
        .visit("Date: 2026-10-05, Horse: Bess, Work: Set");
    DueHorse bess = only();
    assertEquals("Bob", bess.owner());
    assertEquals("Mill", bess.place());
    assertEquals(LocalDate.of(2026, 11, 30), bess.due());
  }

  @Test
  void a_shared_horse_stands_once_with_all_its_owners() {
    book.horse("Horse: Bess, Owner: Cid, Share %: 50, Interval weeks: 6")
        .horse("Horse: Bess, Owner: Ann, Share %: 50")
        .visit("Date: 2026-10-05, Horse: Bess, Work: Set");
    assertEquals("Ann; Cid", only().owner());
  }

  @Test
  void two_works_of_one_day_are_one_visit() {
    book.horse("Horse: Bess, Owner: Ann")
        .visit("Date: 2026-09-01, Horse: Bess, Work: Fronts")
        .visit("Date: 2026-09-01, Horse: Bess, Work: Trim")
        .visit("Date: 2026-10-05, Horse: Bess, Work: Fronts")
        .visit("Date: 2026-10-05, Horse: Bess, Work: Trim");
    assertEquals(2, only().visits().size());
    assertEquals(34, only().interval().days());
    assertEquals(2, only().lastVisit().size());
  }

  @Test
  void a_horse_only_seen_for_a_lost_shoe_has_no_date() {
    book.horse("Horse: Bess, Owner: Ann")
        .visit("Date: 2026-10-05, Horse: Bess, Work: One shoe, Reason: lost shoe");
    assertTrue(dates().horses().isEmpty());
  }

  private DueDates dates() {
    return DueDates.of(book.jobs(), OCTOBER);
  }

  private DueHorse only() {
    assertEquals(1, dates().horses().size());
    return dates().horses().get(0);
  }

  private DueHorse named(String name) {
    return dates().horses().stream()
        .filter(horse -> horse.id().name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}

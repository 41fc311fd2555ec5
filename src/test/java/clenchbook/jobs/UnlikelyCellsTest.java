package clenchbook.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.SmallBook;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cells that read well and can't be so: each warns at its cell, and no other does. */
class UnlikelyCellsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  @TempDir Path folder;

  private static SmallBook good() {
    return SmallBook.visits("Date|Owner|Horse|Work|Charge")
        .visit(DAY, "Ada", "Bramble", "Trim", 45);
  }

  /** A book in which a full set has four shoes. */
  private static SmallBook visits(String headings) {
    return SmallBook.visits("Date|Owner|Horse|Work|" + headings)
        .sheet("Work", "Work|Price|Shoes|Nails per shoe")
        .row("Work", "Full set", 120, 4, 7)
        .row("Work", "Front pair", 80, 2, 7)
        .row("Work", "Trim", 45, 0, "");
  }

  private List<String> told(SmallBook book, ProblemKind kind) {
    return JobResolver.resolve(book.read(folder).book()).problems().stream()
        .filter(problem -> problem.kind() == kind)
        .map(Problem::at)
        .map(Object::toString)
        .toList();
  }

  @Test
  void an_interval_of_nothing_or_of_over_thirty_weeks() {
    SmallBook book = good().sheet("Horses", "Horse|Owner|Interval weeks");
    for (Object weeks : new Object[] {0, 1, 6, 30, 31, 42, ""}) {
      book.row("Horses", "Bramble", "Ada", weeks);
    }
    assertEquals(
        List.of("Horses!C2", "Horses!C6", "Horses!C7"), told(book, ProblemKind.INTERVAL_ODD));
  }

  @Test
  void a_period_that_ends_before_it_begins() {
    SmallBook book =
        good()
            .sheet("Horses", "Horse|Owner|From|Until")
            .row("Horses", "Bramble", "Ada", "2026-03-01", "2026-02-28")
            .row("Horses", "Clover", "Ada", "2026-03-01", "2026-03-01")
            .row("Horses", "Daisy", "Ada", "", "2026-03-01");
    assertEquals(List.of("Horses!D2"), told(book, ProblemKind.UNTIL_BEFORE_FROM));
  }

  @Test
  void a_pack_of_no_pieces() {
    SmallBook book =
        good()
            .sheet("Materials", "Item|Kind|Pack cost|Per pack")
            .row("Materials", "Slim nail", "nail", 30, 0)
            .row("Materials", "Long nail", "nail", 30, 250)
            .row("Materials", "Pad", "pad", 30, "");
    assertEquals(List.of("Materials!D2"), told(book, ProblemKind.PACK_EMPTY));
  }

  @Test
  void net_and_tax_that_are_not_gross() {
    SmallBook book =
        good()
            .sheet("Purchases", "Date|Category|Net|Tax|Gross")
            .row("Purchases", DAY, "Tools", 100, 20, 120)
            .row("Purchases", DAY, "Tools", 100, 20, 112)
            .row("Purchases", DAY, "Tools", 10.004, 2, 12)
            .row("Purchases", DAY, "Tools", 100, "", 120)
            .row("Purchases", DAY, "Tools", "", 20, 120)
            .row("Purchases", DAY, "Tools", -100, -20, -120)
            .row("Purchases", DAY, "Tools", 100, 20, 120.01);
    assertEquals(List.of("Purchases!E3", "Purchases!E8"), told(book, ProblemKind.AMOUNTS_DISAGREE));
  }

  @Test
  void an_odometer_that_runs_backwards_within_a_trip_or_between_two() {
    SmallBook book =
        good()
            .sheet("Trips", "Date|Vehicle|Odometer start|Odometer end")
            .row("Trips", DAY, "Truck", 1_000, 1_020)
            .row("Trips", DAY, "Van", 500, 490)
            .row("Trips", DAY, "Truck", 1_020, 1_050)
            .row("Trips", DAY.plusDays(2), "Truck", 1_060, 1_080)
            .row("Trips", DAY.plusDays(1), "Truck", 1_050, 1_060)
            .row("Trips", DAY.plusDays(3), "Truck", 1_010, 1_090);
    assertEquals(List.of("Trips!D3", "Trips!C7"), told(book, ProblemKind.ODOMETER_BACKWARDS));
  }

  @Test
  void more_shoes_lost_than_were_on() {
    SmallBook book =
        visits("Reason|Lost")
            .visit(DAY, "Ada", "Bramble", "Full set", "", 5)
            .visit(DAY.plusDays(40), "Ada", "Bramble", "Full set", "", 4)
            .visit(DAY.plusDays(80), "Ada", "Bramble", "Front pair", "", "")
            .visit(DAY.plusDays(90), "Ada", "Bramble", "Front pair", "", 3)
            .visit(DAY.plusDays(130), "Ada", "Bramble", "Trim", "", 1)
            .visit(DAY.plusDays(170), "Ada", "Bramble", "Trim", "", 1);
    assertEquals(
        List.of("Visits!F2", "Visits!F5", "Visits!F7"), told(book, ProblemKind.LOST_ABOVE_SHOES));
  }

  /** After a call for one lost shoe of four, four are on again. */
  @Test
  void a_call_for_a_lost_shoe_leaves_the_others_on() {
    SmallBook book =
        visits("Shoes|Reason|Lost")
            .visit(DAY, "Ada", "Bramble", "Full set", "", "", "")
            .visit(DAY.plusDays(10), "Ada", "Bramble", "Full set", 1, "lost shoe", 1)
            .visit(DAY.plusDays(20), "Ada", "Bramble", "Full set", "", "", 4)
            .visit(DAY.plusDays(20), "Ada", "Bramble", "Trim", "", "", 1);
    assertEquals(List.of("Visits!G5"), told(book, ProblemKind.LOST_ABOVE_SHOES));
  }

  /** 0.75 and 1.15 were taken for minutes, and earned 6,536 an hour. */
  @Test
  void minutes_that_look_like_hours() {
    SmallBook book =
        visits("Total min")
            .visit(DAY, "Ada", "Bramble", "Full set", 0.75)
            .visit(DAY, "Ada", "Clover", "Full set", 1.15)
            .visit(DAY, "Ada", "Daisy", "Full set", 4)
            .visit(DAY, "Ada", "Ember", "Full set", 5)
            .visit(DAY, "Ada", "Flint", "Full set", 75)
            .visit(DAY, "Ada", "Gale", "Trim", 0.5)
            .visit(DAY, "Ada", "Hazel", "Trim", 4)
            .visit(DAY, "Ada", "Iris", "Full set", "")
            .visit(DAY, "Ada", "Juno", "Full set", "0:45");
    assertEquals(
        List.of("Visits!E2", "Visits!E3", "Visits!E4", "Visits!E7"),
        told(book, ProblemKind.MINUTES_FEW));
  }

  @Test
  void parts_that_look_like_hours_are_added_up() {
    SmallBook book =
        visits("Trim min|Shape min|Nail min|Grind min")
            .visit(DAY, "Ada", "Bramble", "Full set", 0.25, 0.5, 0.4, "")
            .visit(DAY, "Ada", "Clover", "Full set", 15, 3.5, 20, "")
            .visit(DAY, "Ada", "Daisy", "Full set", "", "", "", 3)
            .visit(DAY, "Ada", "Ember", "Trim", 0.4, "", "", "");
    assertEquals(List.of("Visits!F2", "Visits!E5"), told(book, ProblemKind.MINUTES_FEW));
  }

  /** Five sizes for a full set of four passed in silence where Shoes was blank. */
  @Test
  void parts_that_add_to_another_count_than_the_works() {
    SmallBook book =
        visits("Shoes|Size")
            .visit(DAY, "Ada", "Bramble", "Full set", "", "0: 3; 00: 2")
            .visit(DAY, "Ada", "Clover", "Full set", "", "0: 2; 00: 2")
            .visit(DAY, "Ada", "Daisy", "Full set", 5, "0: 3; 00: 2")
            .visit(DAY, "Ada", "Ember", "Full set", 4, "0: 3; 00: 2");
    assertEquals(
        List.of("Visits!F2", "Visits!F5"), told(book, ProblemKind.PARTS_DIFFER_FROM_SHOES));
  }
}

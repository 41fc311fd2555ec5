package clenchbook.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.Job;
import clenchbook.jobs.WrittenBook;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A job's whole account, done on paper from the formulas in docs/figures.md. */
class JobCostsTest {
  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.HOURLY_WAGE, "30")
        .setting(Setting.HELPER_WAGE, "12")
        .setting(Setting.SUNDRIES, "1.75")
        .setting(Setting.VEHICLE_COST, "0.50")
        .setting(Setting.YEARLY_OVERHEADS, "4500")
        .setting(Setting.HOURS_PER_YEAR, "1500")
        .setting(Setting.GAS_COST_KG, "3")
        .place("Place: Yard, Distance: 10, Drive min: 15")
        .material("Item: plain, Kind: keg, Size: 0, Unit cost: 4")
        .material("Item: own, Kind: handmade, Unit cost: 2, Making min: 10");
  }

  private static final String SET =
      "Date: 2026-10-05, Horse: A, Owner: Ruth, Work: Set, Place: Yard, Charge: 120, ";

  /**
   * Own time 60 + 30 + 5 = 95 min. Labour 95 x 0.5 + 20 x 0.2 = 51.50; overhead 95 x 0.05 = 4.75;
   * travel 20 km x 0.50 = 10.00; gas (25 + 5) x 0.04 = 1.20; shoes 16.00. Before labour 120 - 16 -
   * 1.20 - 1.75 - 10 - 4.75 = 86.30, an hour 86.30 x 60 / 95 = 54.505.
   */
  @Test
  void a_hot_set_is_costed_to_the_cent() {
    WrittenBook book =
        book()
            .visit(
                SET
                    + "Shoe: plain, Size: 0, Shoes: 4, Shaping: hot, Forge min: 25, Total min: 60,"
                    + " Helper min: 20");
    assertEquals("120.00", CostedBook.each(book, JobCost::chargeNet));
    assertEquals("16.00", CostedBook.each(book, JobCost::materials));
    assertEquals("1.20", CostedBook.each(book, JobCost::gas));
    assertEquals("1.75", CostedBook.each(book, JobCost::sundries));
    assertEquals("10.00", CostedBook.each(book, JobCost::travel));
    assertEquals("4.75", CostedBook.each(book, JobCost::overhead));
    assertEquals("51.50", CostedBook.each(book, JobCost::labour));
    assertEquals("65", CostedBook.each(book, JobCost::jobMinutes));
    assertEquals("95", CostedBook.each(book, JobCost::ownMinutes));
    assertEquals("86.30", CostedBook.each(book, JobCost::marginBeforeLabour));
    assertEquals("34.80", CostedBook.each(book, JobCost::marginAfterLabour));
    assertEquals("Optional[54.51]", CostedBook.each(book, JobCost::earnedPerHour));
    assertEquals("MEASURED", CostedBook.each(book, JobCost::timeBasis));
  }

  @Test
  void making_is_the_farriers_own_time() {
    WrittenBook book =
        book().visit(SET + "Shoe: own, Shoes: 4, New shoes: 3, Shaping: cold, Total min: 60");
    // 60 + 30 of the way + 30 of making.
    assertEquals("120", CostedBook.each(book, JobCost::ownMinutes));
    assertEquals("60.00", CostedBook.each(book, JobCost::labour));
    assertEquals("6.00", CostedBook.each(book, JobCost::overhead));
  }

  @Test
  void a_cancelled_row_has_nothing_anywhere() {
    WrittenBook book = book().visit(SET + "Shoes: 4, Total min: 60, Reason: cancelled");
    JobCost cost = CostedBook.costs(book).get(0);
    List.of(
            cost.chargeNet(),
            cost.materials(),
            cost.gas(),
            cost.sundries(),
            cost.travel(),
            cost.overhead(),
            cost.labour(),
            cost.jobMinutes(),
            cost.ownMinutes(),
            cost.driveMinutes(),
            cost.marginAfterLabour())
        .forEach(amount -> assertEquals(0, amount.signum()));
    assertEquals(Optional.empty(), cost.earnedPerHour());
  }

  @Test
  void sundries_are_used_up_once_a_horse_and_visit_and_never_by_a_fee() {
    WrittenBook book =
        book()
            .work("Work: Call-out, Kind: fee, Price: 20")
            .visit("Date: 2026-10-05, Owner: Ruth, Work: Call-out")
            .visit("Date: 2026-10-05, Horse: A, Owner: Ruth, Work: Trim")
            .visit("Date: 2026-10-05, Horse: A, Owner: Ruth, Work: Pads")
            .visit("Date: 2026-10-05, Horse: B, Owner: Ruth, Work: Trim");
    assertEquals("0.00 1.75 0.00 1.75", CostedBook.each(book, JobCost::sundries));
  }

  @ParameterizedTest
  @CsvSource({
    "'Total min: 60', MEASURED",
    "'Trim min: 10, Shape min: 20, Nail min: 20', MEASURED",
    "'Trim min: 10', STANDARD",
    "'', DEFAULT"
  })
  void the_time_rests_on_what_was_measured(String cells, String basis) {
    WrittenBook book =
        book().visit(SET + "Shoes: 4, Shaping: cold" + (cells.isEmpty() ? "" : ", ") + cells);
    assertEquals(basis, CostedBook.each(book, JobCost::timeBasis));
  }

  @ParameterizedTest
  @CsvSource({
    "2026-10-05, 2026-10-06, 2",
    "2026-10-05, 2026-10-05, 1",
    "2026-10-06, 2026-10-31, 1",
    "2026-10-07, 2026-10-31, 0",
    "2026-10-01, 2026-10-04, 0"
  })
  void a_period_holds_its_first_and_its_last_day(LocalDate first, LocalDate last, int jobs) {
    WrittenBook book =
        book()
            .visit("Date: 2026-10-05, Horse: A, Owner: Ruth, Work: Trim")
            .visit("Date: 2026-10-06, Horse: A, Owner: Ruth, Work: Trim");
    assertEquals(jobs, JobCosts.of(book.jobs(), CostedBook.LAST).between(first, last).size());
  }

  @Test
  void a_stop_is_a_day_and_a_place_and_the_placeless_of_a_day_are_one() {
    WrittenBook book =
        book()
            .visit("Date: 2026-10-06, Horse: A, Owner: Ruth, Work: Trim, Place: Yard")
            .visit("Date: 2026-10-05, Horse: A, Owner: Ruth, Work: Trim")
            .visit("Date: 2026-10-05, Horse: B, Owner: Ruth, Work: Trim, Place: yard ")
            .visit("Date: 2026-10-05, Horse: C, Owner: Ruth, Work: Trim")
            .visit("Date: 2026-10-05, Horse: D, Owner: Ruth, Work: Trim, Place: Yard")
            .visit("Date: 2026-10-05, Horse: E, Owner: Ruth, Work: Trim, Reason: cancelled");
    Map<LocalDate, List<Stop>> days = Stops.byDay(book.jobs().all());
    assertEquals(
        List.of("2026-10-05  A C", "2026-10-05 Yard B D", "2026-10-06 Yard A"),
        days.values().stream().flatMap(List::stream).map(JobCostsTest::written).toList());
  }

  private static String written(Stop stop) {
    List<String> horses = stop.jobs().stream().map(Job::horse).map(horse -> horse.name()).toList();
    return stop.date() + " " + stop.place() + " " + String.join(" ", horses);
  }
}

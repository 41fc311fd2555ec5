package clenchbook.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A day's driving over its jobs, worked out on paper from the rule in docs/figures.md (common
 * practice, no source): 60 km at 0.45 are 27.00.
 */
class TravelCostsTest {
  private static final String DAY = "Date: 2026-10-05, ";

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.VEHICLE_COST, "0.45")
        .place("Place: Near, Distance: 10, Drive min: 12")
        .place("Place: Far, Distance: 20, Drive min: 25")
        .place("Place: Home, Distance: 0, Drive min: 0")
        .place("Place: Unknown");
  }

  private static WrittenBook visits(String... places) {
    WrittenBook book = book();
    for (int horse = 0; horse < places.length; horse++) {
      book.visit(DAY + "Horse: H" + horse + ", Owner: Ruth, Work: Trim, Place: " + places[horse]);
    }
    return book;
  }

  private static WrittenBook driven(String... places) {
    return visits(places).trip(DAY + "Distance: 60, Drive min: 90");
  }

  @Test
  void a_days_driving_is_shared_by_distance_then_equally() {
    WrittenBook book = driven("Near", "Far", "Far");
    assertEquals("9.00 9.00 9.00", CostedBook.each(book, JobCost::travel));
    assertEquals("30 30 30", CostedBook.each(book, JobCost::driveMinutes));
    assertEquals("MEASURED MEASURED MEASURED", CostedBook.each(book, JobCost::travelBasis));
  }

  @Test
  void the_nearer_place_bears_less() {
    WrittenBook book = driven("Near", "Far");
    assertEquals("9.00 18.00", CostedBook.each(book, JobCost::travel));
    assertEquals("30 60", CostedBook.each(book, JobCost::driveMinutes));
  }

  @ParameterizedTest
  @CsvSource({"Near, Unknown", "Near, ''", "Near, Elsewhere", "Home, Home2"})
  void places_share_equally_where_one_has_no_distance_or_none_is_away(String one, String other) {
    WrittenBook book = driven(one, other).place("Place: Home2, Distance: 0");
    assertEquals("13.50 13.50", CostedBook.each(book, JobCost::travel));
    assertEquals("45 45", CostedBook.each(book, JobCost::driveMinutes));
  }

  @Test
  void a_place_at_home_bears_nothing_beside_one_that_is_away() {
    assertEquals("0.00 27.00", CostedBook.each(driven("Home", "Near"), JobCost::travel));
  }

  @Test
  void the_odd_cent_goes_to_the_earlier_row() {
    WrittenBook book = visits("Near", "Near", "Near").trip(DAY + "Distance: 10");
    assertEquals("1.50 1.50 1.50", CostedBook.each(book, JobCost::travel));
    WrittenBook odd = visits("Near", "Near", "Near").trip(DAY + "Distance: 10.03");
    // 10.03 km are 4.5135, so 4.51.
    assertEquals("1.51 1.50 1.50", CostedBook.each(odd, JobCost::travel));
    assertEquals("0 0 0", CostedBook.each(odd, JobCost::driveMinutes));
  }

  @Test
  void trips_of_a_day_add_up_private_ones_never_count() {
    WrittenBook book =
        visits("Near")
            .trip(DAY + "Odometer start: 100, Odometer end: 140, Drive min: 50")
            .trip(DAY + "Distance: 20, Odometer start: 140, Odometer end: 999, Drive min: 40")
            .trip(DAY + "Distance: 500, Drive min: 300, Purpose: Private")
            .trip("Date: 2026-10-06, Distance: 500, Drive min: 300");
    assertEquals("27.00", CostedBook.each(book, JobCost::travel));
    assertEquals("90", CostedBook.each(book, JobCost::driveMinutes));
  }

  /** Twice 10 and twice 20 km at 0.45; the two jobs at Far share its 18.00. */
  @Test
  void a_day_without_trips_is_out_and_back_for_each_place() {
    WrittenBook book = visits("Near", "Far", "Far");
    assertEquals("9.00 9.00 9.00", CostedBook.each(book, JobCost::travel));
    assertEquals("24 25 25", CostedBook.each(book, JobCost::driveMinutes));
    assertEquals("STANDARD STANDARD STANDARD", CostedBook.each(book, JobCost::travelBasis));
  }

  @Test
  void a_place_without_figures_costs_nothing_by_default() {
    WrittenBook book = visits("Unknown", "").place("Place: Timed, Drive min: 8");
    book.visit(DAY + "Horse: Z, Owner: Ruth, Work: Trim, Place: Timed");
    assertEquals("0.00 0.00 0.00", CostedBook.each(book, JobCost::travel));
    assertEquals("0 0 16", CostedBook.each(book, JobCost::driveMinutes));
    assertEquals("DEFAULT DEFAULT STANDARD", CostedBook.each(book, JobCost::travelBasis));
  }

  @Test
  void a_private_trip_alone_leaves_the_day_without_trips() {
    WrittenBook book = visits("Near").trip(DAY + "Distance: 500, Purpose: private");
    assertEquals("9.00", CostedBook.each(book, JobCost::travel));
  }

  @Test
  void a_fee_bears_its_share_and_a_cancelled_row_none() {
    WrittenBook book =
        visits("Near", "Near")
            .work("Work: Call-out, Kind: fee, Price: 20")
            .visit(DAY + "Owner: Ruth, Work: Call-out, Place: Near")
            .visit(DAY + "Horse: C, Owner: Ruth, Work: Trim, Place: Near, Reason: cancelled")
            .trip(DAY + "Distance: 60, Drive min: 90");
    assertEquals("9.00 9.00 9.00 0.00", CostedBook.each(book, JobCost::travel));
    assertEquals("30 30 30 0", CostedBook.each(book, JobCost::driveMinutes));
  }
}

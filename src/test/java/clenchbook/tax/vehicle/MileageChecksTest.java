package clenchbook.tax.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.SourceRow;
import clenchbook.book.Trip;
import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.RateLookup;
import clenchbook.texts.InEnglish;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class MileageChecksTest {
  private static final Period YEAR =
      new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31));
  private static final Map<String, String> COLUMNS = Map.of("Distance", "D", "Odometer start", "E");

  private static Trip trip(
      int row,
      String day,
      String distance,
      String start,
      String end,
      String minutes,
      String purpose) {
    return new Trip(
        new SourceRow("Trips", 3, row, COLUMNS),
        LocalDate.parse(day),
        "Home",
        "Oak",
        number(distance),
        number(start),
        number(end),
        number(minutes),
        purpose,
        "truck");
  }

  private static Optional<BigDecimal> number(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(text));
  }

  private static MileageLog log(Trip... trips) {
    RateLookup rates = new RateLookup(RateFiles.bundled());
    return MileageLog.of(
        List.of(trips), YEAR, new MileageChecks(DistanceUnit.MILE, rates, YEAR.last()));
  }

  /** A wording whose English page says what its file says. */
  private static String alike(Wording what) {
    assertEquals(what.file(), InEnglish.filed(what.said()));
    return what.file();
  }

  private static List<String> flags(Trip... trips) {
    return log(trips).flags().stream()
        .map(flag -> flag.source().row() + " " + alike(flag.what()))
        .toList();
  }

  @Test
  void readings_that_follow_each_other_are_in_order() {
    assertEquals(
        List.of(),
        flags(
            trip(2, "2026-01-05", "", "1000", "1040", "60", "rounds"),
            trip(3, "2026-01-06", "", "1040", "1100", "80", "rounds")));
  }

  @Test
  void a_gap_and_an_overlap_are_flagged_at_the_later_trip() {
    assertEquals(
        List.of("3 a gap of 25 since the trip before", "4 an overlap of 10 with the trip before"),
        flags(
            trip(2, "2026-01-05", "", "1000", "1040", "", "rounds"),
            trip(3, "2026-01-06", "", "1065", "1100", "", "rounds"),
            trip(4, "2026-01-07", "", "1090", "1120", "", "rounds")));
  }

  @Test
  void a_trip_without_readings_fills_the_gap_by_its_distance() {
    assertEquals(
        List.of(),
        flags(
            trip(2, "2026-01-05", "", "1000", "1040", "", "rounds"),
            trip(3, "2026-01-06", "25", "", "", "", "rounds"),
            trip(4, "2026-01-07", "", "1065", "1100", "", "rounds")));
  }

  @Test
  void jumps_that_cannot_be_are_flagged() {
    assertEquals(
        List.of(
            "2 the odometer ends below its start",
            "3 the odometer says 50",
            "4 too fast for the distance",
            "5 further in one day than is likely",
            "6 no distance and no odometer: the trip counts as none"),
        Stream.of(
                flags(trip(2, "2026-01-05", "", "1040", "1000", "", "rounds")),
                flags(trip(3, "2026-01-05", "40", "1000", "1050", "", "rounds")),
                flags(trip(4, "2026-01-05", "80", "", "", "60", "rounds")),
                flags(trip(5, "2026-01-05", "501", "", "", "", "rounds")),
                flags(trip(6, "2026-01-05", "", "", "", "", "rounds")))
            .flatMap(List::stream)
            .toList());
  }

  @Test
  void what_the_odometer_shows_beyond_the_trips_is_private() {
    MileageLog log =
        log(
            trip(2, "2026-01-05", "", "1000", "1040", "", "rounds"),
            trip(3, "2026-01-06", "", "1100", "1120", "", "private"));
    assertEquals(new BigDecimal("40"), log.business());
    assertEquals(new BigDecimal("120"), log.total());
    assertEquals(new BigDecimal("80"), log.privateDistance());
  }

  @Test
  void trips_of_another_year_stay_out() {
    assertEquals(0, log(trip(2, "2025-12-31", "40", "", "", "", "rounds")).trips().size());
  }
}

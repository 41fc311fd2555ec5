package clenchbook.tax.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.SourceRow;
import clenchbook.book.Trip;
import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.uk.UkJurisdiction;
import clenchbook.tax.jurisdiction.us.UsJurisdiction;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.RateLookup;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MileageAllowanceTest {
  private static final Jurisdiction US = new UsJurisdiction();
  private static final Jurisdiction UK = new UkJurisdiction();
  private static final MinorUnit CENTS = new MinorUnit(2);
  private final RateLookup rates = new RateLookup(RateFiles.bundled());

  static Trip trip(int row, String day, String distance, String purpose, String vehicle) {
    return new Trip(
        new SourceRow("Trips", 3, row, Map.of()),
        LocalDate.parse(day),
        "Home",
        "Oak Lane",
        Optional.of(new BigDecimal(distance)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        purpose,
        vehicle);
  }

  private MileageAllowance of(Jurisdiction country, DistanceUnit unit, Trip... trips) {
    return country.mileage(MileageAllowance.driven(List.of(trips)), unit, rates, CENTS);
  }

  /**
   * IRS Notice 2022-03 and Announcement 2022-13: 1,000 miles on each side of 1 July 2022 are 585.00
   * + 625.00.
   */
  @Test
  void miles_on_both_sides_of_the_first_of_july_2022_take_their_own_rate() {
    MileageAllowance found =
        of(
            US,
            DistanceUnit.MILE,
            trip(2, "2022-06-30", "1000", "rounds", "truck"),
            trip(3, "2022-07-01", "1000", "rounds", "truck"));
    assertEquals(new BigDecimal("1210.00"), found.amount(CENTS));
    assertEquals(new BigDecimal("585.00"), found.items().get(0).net());
    assertEquals(new BigDecimal("625.00"), found.items().get(1).net());
  }

  /**
   * gov.uk, Simplified expenses if you're self-employed: 11,000 business miles are 4,500 + 250 =
   * 4,750.
   */
  @Test
  void eleven_thousand_miles_at_the_simplified_rate() {
    List<Trip> trips = new ArrayList<>();
    for (int i = 0; i < 110; i++) {
      trips.add(
          trip(i + 2, LocalDate.of(2025, 4, 6).plusDays(i).toString(), "100", "rounds", "van"));
    }
    MileageAllowance found = UK.mileage(trips, DistanceUnit.MILE, rates, CENTS);
    assertEquals(new BigDecimal("4750.00"), found.amount(CENTS));
    assertEquals(110, found.items().size());
    assertEquals(new BigDecimal("45.00"), found.items().get(99).net());
    assertEquals(new BigDecimal("25.00"), found.items().get(100).net());
  }

  @Test
  void a_trip_that_crosses_ten_thousand_miles_takes_both_rates_on_one_row() {
    MileageAllowance found =
        of(
            UK,
            DistanceUnit.MILE,
            trip(2, "2025-05-01", "9990", "rounds", "van"),
            trip(3, "2025-05-02", "20", "rounds", "van"));
    assertEquals(2, found.items().size());
    assertEquals(new BigDecimal("7.00"), found.items().get(1).net());
  }

  @Test
  void a_motorcycle_has_its_own_rate_and_uses_up_none_of_the_first_miles() {
    MileageAllowance found =
        of(
            UK,
            DistanceUnit.MILE,
            trip(2, "2025-05-01", "100", "rounds", "motorcycle"),
            trip(3, "2025-05-02", "10000", "rounds", "van"));
    assertEquals(new BigDecimal("4524.00"), found.amount(CENTS));
  }

  @Test
  void private_trips_count_for_nothing() {
    assertTrue(
        of(US, DistanceUnit.MILE, trip(2, "2025-05-01", "10", "Private", "")).items().isEmpty());
  }

  /** The international mile is 1.609344 km exactly; 160.9344 km at 0.70 are 70.00. */
  @Test
  void kilometres_are_turned_into_miles_first() {
    MileageAllowance found =
        of(US, DistanceUnit.KM, trip(2, "2025-05-01", "160.9344", "rounds", ""));
    assertEquals(new BigDecimal("70.00"), found.amount(CENTS));
  }

  @Test
  void rows_add_to_the_amount_to_the_cent() {
    MileageAllowance found =
        of(
            US,
            DistanceUnit.MILE,
            trip(2, "2026-05-01", "0.7", "rounds", ""),
            trip(3, "2026-05-02", "0.7", "rounds", ""),
            trip(4, "2026-05-03", "0.7", "rounds", ""));
    assertEquals(new BigDecimal("1.52"), found.steps().get(0).amount());
    assertEquals(new BigDecimal("1.52"), LineItem.sum(found.items()));
  }

  @Test
  void a_day_without_a_rate_is_left_out_and_named() {
    assertTrue(
        of(US, DistanceUnit.MILE, trip(2, "2099-05-01", "10", "rounds", "")).items().isEmpty());
    assertTrue(rates.missing().get(0).table().contains("us/mileage"));
  }
}

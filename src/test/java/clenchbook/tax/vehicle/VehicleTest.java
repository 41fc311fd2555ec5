package clenchbook.tax.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.jobs.WrittenBook;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.WrittenRates;
import clenchbook.tax.year.Regime;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The vehicle by its miles or at cost, shares and sums on paper. */
class VehicleTest {
  private static final MinorUnit CENTS = new MinorUnit(2);
  private static final Period YEAR =
      new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31));

  private static LineItem row(int row, String net) {
    BigDecimal amount = new BigDecimal(net);
    LocalDate day = LocalDate.of(2026, 3, row);
    return new LineItem("vehicle", "Purchases", row, day, "Garage", amount, CENTS.zero(), amount);
  }

  private static MileageLog log(WrittenBook book) {
    MileageChecks checks = new MileageChecks(DistanceUnit.KM, WrittenRates.lookup(), YEAR.last());
    return MileageLog.of(book.book().trips(), YEAR, checks);
  }

  private static Vehicle vehicle(WrittenBook book, List<LineItem> rows) {
    return Vehicle.of(
        MileageAllowance.none(),
        log(book),
        rows,
        book.book().assets(),
        WrittenRates.regime(),
        CENTS);
  }

  private static List<String> written(List<LineItem> items) {
    return items.stream()
        .map(item -> item.code() + " " + item.row() + " " + item.net().toPlainString())
        .toList();
  }

  /** 750 of 1,000 km are business: 100.01 and 50.00 count at 75.01 and 37.50, together 112.51. */
  @Test
  void the_logs_own_share_cuts_what_the_vehicle_cost_to_the_cent() {
    WrittenBook book =
        new WrittenBook()
            .trip("Date: 2026-02-01, Distance: 750")
            .trip("Date: 2026-02-02, Distance: 250, Purpose: private");
    List<LineItem> rows = List.of(row(2, "100.01"), row(3, "50.00"));
    Vehicle found = vehicle(book, rows);
    assertEquals(0, new BigDecimal("0.75").compareTo(found.share()));
    assertEquals("business distance over all distance of the log", found.shareBasis().file());
    assertEquals(List.of("vehicle 2 75.01", "vehicle 3 37.50"), written(found.counted()));
    assertEquals(
        List.of("vehicle 2 75.01", "vehicle 3 37.50", "private 2 25.00", "private 3 12.50"),
        written(found.forJournal(rows)));
  }

  /** A refund among the rows: each row is rounded by itself. */
  @Test
  void rows_of_both_signs_are_cut_one_by_one() {
    WrittenBook book =
        new WrittenBook().asset("Asset: Van, Bought: 2024-01-01, Business use %: 50");
    Vehicle found = vehicle(book, List.of(row(2, "100.01"), row(3, "-50.01")));
    assertEquals(List.of("vehicle 2 50.01", "vehicle 3 -25.01"), written(found.actual()));
    assertEquals("Business use % of the vehicle in Assets", found.shareBasis().file());
  }

  @Test
  void a_log_of_business_alone_tells_no_share() {
    WrittenBook book = new WrittenBook().trip("Date: 2026-02-01, Distance: 750");
    Vehicle found = vehicle(book, List.of(row(2, "100.00")));
    assertEquals(List.of("vehicle 2 100.00"), written(found.actual()));
    assertEquals("default: all of it, for want of odometer readings", found.shareBasis().file());
  }

  @Test
  void a_country_that_leaves_the_share_to_a_preparer_takes_all_of_it() {
    Regime whole = WrittenRates.regime(true, false);
    WrittenBook book =
        new WrittenBook().asset("Asset: Van, Bought: 2024-01-01, Business use %: 50");
    Vehicle found =
        Vehicle.of(
            MileageAllowance.none(),
            log(book),
            List.of(row(2, "100.00")),
            book.book().assets(),
            whole,
            CENTS);
    assertEquals(List.of("vehicle 2 100.00"), written(found.counted()));
    assertEquals("all of it; a preparer sets the share", found.shareBasis().file());
  }

  @Test
  void business_beyond_the_whole_is_the_whole() {
    WrittenBook book =
        new WrittenBook()
            .trip("Date: 2026-02-01, Odometer start: 100, Odometer end: 200, Distance: 100");
    assertEquals(0, BigDecimal.ONE.compareTo(vehicle(book, List.of()).share()));
  }

  /** 120 and 80 km at 0.30: 60.00, of which 36.00 and 24.00. */
  @Test
  void where_miles_count_the_cost_is_shown_beside_them() {
    WrittenBook book =
        new WrittenBook()
            .trip("Date: 2026-02-02, Distance: 80, From: A, To: B")
            .trip("Date: 2026-02-01, Distance: 120, Purpose: rounds");
    Rate rate = WrittenRates.row("x/mileage, car, per km, 0.30");
    List<MileageAllowance.Stretch> stretches =
        MileageAllowance.driven(book.book().trips()).stream()
            .map(trip -> new MileageAllowance.Stretch(trip, rate, trip.distance().get()))
            .toList();
    MileageAllowance mileage = MileageAllowance.of(stretches, "vehicle", CENTS);
    assertEquals(new BigDecimal("60.00"), mileage.amount(CENTS));
    assertEquals(List.of("vehicle 3 36.00", "vehicle 2 24.00"), written(mileage.items()));
    assertEquals(List.of("rounds", "A to B"), mileage.items().stream().map(LineItem::who).toList());
    List<LineItem> rows = List.of(row(2, "100.00"));
    Vehicle found = Vehicle.of(mileage, log(book), rows, List.of(), WrittenRates.regime(), CENTS);
    assertEquals(true, found.byMileage());
    assertEquals(mileage.items(), found.counted());
    assertEquals(rows, found.forJournal(rows), "all of it is private");
  }

  @Test
  void only_business_trips_of_some_distance_were_driven() {
    WrittenBook book =
        new WrittenBook()
            .trip("Date: 2026-02-02, Distance: 0")
            .trip("Date: 2026-02-02, Drive min: 5")
            .trip("Date: 2026-02-02, Distance: 7, Purpose: Private")
            .trip("Date: 2026-02-03, Distance: 8")
            .trip("Date: 2026-02-02, Distance: 9");
    assertEquals(
        List.of(new BigDecimal("9"), new BigDecimal("8")),
        MileageAllowance.driven(book.book().trips()).stream()
            .map(trip -> trip.distance().get())
            .toList());
  }

  /** A trip of 30 km across a change of rate: 10 at 0.50 and 20 at 0.25 are one row of 10.00. */
  @Test
  void a_trip_that_crosses_a_rate_is_one_row_and_two_steps() {
    WrittenBook book = new WrittenBook().trip("Date: 2026-02-02, Distance: 30, From: A, To: B");
    Rate dear = WrittenRates.row("x/mileage, first, per km, 0.50");
    Rate cheap = WrittenRates.row("x/mileage, then, per km, 0.25");
    MileageAllowance mileage =
        MileageAllowance.of(
            List.of(
                new MileageAllowance.Stretch(book.book().trips().get(0), dear, BigDecimal.TEN),
                new MileageAllowance.Stretch(
                    book.book().trips().get(0), cheap, new BigDecimal("20"))),
            "vehicle",
            CENTS);
    assertEquals(List.of("vehicle 2 10.00"), written(mileage.items()));
    assertEquals(
        List.of("first 10 5.00", "then 20 5.00"),
        mileage.steps().stream()
            .map(step -> step.rate().code() + " " + step.distance() + " " + step.amount())
            .toList());
  }

  /** A mile is 1.609344 km (international yard and pound agreement, 1959). */
  @ParameterizedTest
  @CsvSource({"KM, 160.9344, 100.00, 160.93", "MILE, 100, 100.00, 160.93"})
  void distances_are_turned_by_the_statute_mile(
      DistanceUnit unit, BigDecimal distance, BigDecimal miles, BigDecimal km) {
    assertEquals(miles, unit.miles(distance).setScale(2, RoundingMode.HALF_UP));
    assertEquals(km, unit.kilometres(distance).setScale(2, RoundingMode.HALF_UP));
    assertEquals(unit, DistanceUnit.of(unit.word()));
  }

  @Test
  void the_log_adds_up_the_years_trips_by_vehicle() {
    WrittenBook book =
        new WrittenBook()
            .trip("Date: 2025-12-31, Distance: 1000")
            .trip("Date: 2026-01-01, Odometer start: 100, Odometer end: 160, Vehicle: Van")
            .trip("Date: 2026-01-03, Odometer start: 300, Odometer end: 340, Vehicle: van")
            .trip("Date: 2026-01-04, Distance: 30, Vehicle: Car, Purpose: private")
            .trip("Date: 2026-01-05, Odometer start: 50, Odometer end: 40, Vehicle: Bike")
            .trip("Date: 2027-01-01, Distance: 1000");
    MileageLog log = log(book);
    assertEquals(4, log.trips().size());
    // The van's readings span 240, though 100 are written down; the bike ran backwards by 10.
    assertEquals(new BigDecimal("100"), log.business());
    assertEquals(new BigDecimal("280"), log.total());
    assertEquals(new BigDecimal("180"), log.privateDistance());
    assertEquals(true, log.fromOdometers());
    assertEquals(true, log.tellsShare());
  }

  @Test
  void a_log_without_any_distance_tells_no_share() {
    MileageLog log = log(new WrittenBook().trip("Date: 2026-01-01, Purpose: private"));
    assertEquals(false, log.tellsShare());
    assertEquals(false, log.fromOdometers());
  }

  @Test
  void days_of_visits_without_a_trip_are_reconstructed_out_and_back() {
    WrittenBook book =
        new WrittenBook()
            .place("Place: Oak, Distance: 12")
            .place("Place: Ash")
            .visit("Date: 2026-02-01, Horse: A, Owner: R, Work: T, Place: Oak")
            .visit("Date: 2026-02-01, Horse: B, Owner: R, Work: T, Place: Ash")
            .visit("Date: 2026-02-01, Horse: C, Owner: R, Work: T, Place: oak")
            .visit("Date: 2026-02-02, Horse: A, Owner: R, Work: T, Place: Oak")
            .visit("Date: 2026-02-03, Horse: A, Owner: R, Work: T, Place: Oak, Reason: cancelled")
            .visit("Date: 2026-02-04, Horse: A, Owner: R, Work: T")
            .visit("Date: 2026-02-05, Horse: A, Owner: R, Work: T, Place: Oak")
            .visit("Date: 2025-12-31, Horse: A, Owner: R, Work: T, Place: Oak")
            .trip("Date: 2026-02-02, Distance: 24")
            .trip("Date: 2026-02-05, Distance: 24, Purpose: private");
    List<Reconstructed> found =
        Reconstructed.of(book.jobs().all(), book.book().trips(), book.book().places(), YEAR);
    assertEquals(
        List.of(
            new Reconstructed(LocalDate.of(2026, 2, 1), "Ash", Optional.empty()),
            new Reconstructed(LocalDate.of(2026, 2, 1), "Oak", Optional.of(new BigDecimal("24"))),
            new Reconstructed(LocalDate.of(2026, 2, 5), "Oak", Optional.of(new BigDecimal("24")))),
        found);
    assertEquals(new BigDecimal("48"), Reconstructed.total(found));
  }
}

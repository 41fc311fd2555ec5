package clenchbook.tax.vehicle;

import clenchbook.book.Names;
import clenchbook.book.SourceRow;
import clenchbook.book.Trip;
import clenchbook.tax.page.Wording;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The year's trips as the farrier wrote them, what they come to, and what is odd about them.
 *
 * @param trips the rows of Trips in the period, by date, sheet and row
 * @param business business distance, in the book's unit
 * @param total all distance: by the odometers where they are read, else all trips
 * @param fromOdometers whether odometer readings stand behind the total
 * @param flags what is odd, by date, sheet and row
 */
public record MileageLog(
    List<Trip> trips,
    BigDecimal business,
    BigDecimal total,
    boolean fromOdometers,
    List<Flag> flags) {
  private static final Comparator<Trip> ORDER =
      Comparator.comparing(Trip::date).thenComparing(Trip::source);

  /**
   * Something odd about a trip.
   *
   * @param source its row
   * @param heading the heading of the cell to look at
   * @param what what is odd
   * @param value the cell's value
   */
  public record Flag(SourceRow source, String heading, Wording what, String value) {}

  /**
   * The trips of the period, by date and row, with their sums in the book's unit of distance and
   * what is odd about them.
   */
  public static MileageLog of(List<Trip> all, Period period, MileageChecks checks) {
    List<Trip> trips =
        all.stream().filter(trip -> period.holds(trip.date())).sorted(ORDER).toList();
    BigDecimal business = sum(trips.stream().filter(Trip::business).toList());
    BigDecimal total = BigDecimal.ZERO;
    boolean read = false;
    List<Flag> flags = new ArrayList<>(checks.single(trips));
    for (List<Trip> ofVehicle : byVehicle(trips)) {
      Optional<BigDecimal> span = span(ofVehicle);
      read |= span.isPresent();
      total = total.add(sum(ofVehicle).max(span.orElse(BigDecimal.ZERO)));
      flags.addAll(checks.chain(ofVehicle));
    }
    flags.sort(Comparator.comparing(Flag::source).thenComparing(flag -> flag.what().file()));
    return new MileageLog(trips, business, total, read, List.copyOf(flags));
  }

  private static List<List<Trip>> byVehicle(List<Trip> trips) {
    TreeMap<String, List<Trip>> byVehicle = new TreeMap<>();
    trips.forEach(
        trip ->
            byVehicle
                .computeIfAbsent(Names.key(trip.vehicle()), unused -> new ArrayList<>())
                .add(trip));
    return List.copyOf(byVehicle.values());
  }

  /** From the lowest to the highest reading; empty where fewer than two were read. */
  private static Optional<BigDecimal> span(List<Trip> trips) {
    List<BigDecimal> readings = new ArrayList<>();
    trips.forEach(trip -> trip.odometerStart().ifPresent(readings::add));
    trips.forEach(trip -> trip.odometerEnd().ifPresent(readings::add));
    Optional<BigDecimal> low = readings.stream().min(Comparator.naturalOrder());
    Optional<BigDecimal> high = readings.stream().max(Comparator.naturalOrder());
    return low.flatMap(from -> high.map(to -> to.subtract(from))).filter(span -> span.signum() > 0);
  }

  private static BigDecimal sum(List<Trip> trips) {
    return trips.stream()
        .map(trip -> trip.distance().orElse(BigDecimal.ZERO).max(BigDecimal.ZERO))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** What is not business. */
  public BigDecimal privateDistance() {
    return total.subtract(business);
  }

  /** Whether the log itself tells business from private: by odometers or by private trips. */
  boolean tellsShare() {
    return total.signum() > 0
        && (fromOdometers || trips.stream().anyMatch(trip -> !trip.business()));
  }
}

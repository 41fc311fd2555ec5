package clenchbook.tax.vehicle;

import clenchbook.book.Trip;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.RateLookup;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Looks for trips that cannot have been driven as written. Nothing is changed by it. Limits from
 * {@code plain/checks}.
 */
public final class MileageChecks {
  private static final BigDecimal MINUTES = BigDecimal.valueOf(60);
  private static final Wording NO_DISTANCE =
      Wording.of("no distance and no odometer: the trip counts as none", "tax.odd.noDistance");
  private static final Wording ENDS_BELOW =
      Wording.of("the odometer ends below its start", "tax.odd.endsBelow");
  private static final Wording TOO_FAST =
      Wording.of("too fast for the distance", "tax.odd.tooFast");
  private static final Wording FAR = Wording.of("further in one day than is likely", "tax.odd.far");

  private final DistanceUnit unit;
  private final Optional<BigDecimal> furthestDay;
  private final Optional<BigDecimal> fastest;
  private final BigDecimal tolerance;

  /** The limits in force on a day; a limit that no table gives is not checked. */
  public MileageChecks(DistanceUnit unit, RateLookup rates, LocalDate day) {
    this.unit = unit;
    this.furthestDay = limit(rates, "furthest day", day);
    this.fastest = limit(rates, "fastest trip", day);
    this.tolerance = limit(rates, "distance difference", day).orElse(BigDecimal.ZERO);
  }

  private static Optional<BigDecimal> limit(RateLookup rates, String code, LocalDate day) {
    return rates.inForce("plain/checks", day).stream()
        .filter(row -> row.code().equals(code))
        .map(row -> row.amount())
        .findFirst();
  }

  /** What is odd about each trip by itself, and about each day. */
  List<MileageLog.Flag> single(List<Trip> trips) {
    List<MileageLog.Flag> flags = new ArrayList<>();
    trips.forEach(trip -> addSingle(trip, flags));
    addDays(trips, flags);
    return flags;
  }

  private void addSingle(Trip trip, List<MileageLog.Flag> flags) {
    if (trip.distance().isEmpty()) {
      flags.add(flag(trip, "Distance", NO_DISTANCE, ""));
      return;
    }
    BigDecimal distance = trip.distance().get();
    if (distance.signum() < 0) {
      flags.add(flag(trip, "Odometer end", ENDS_BELOW, text(trip.odometerEnd())));
    }
    odometerDistance(trip)
        .filter(driven -> unit.miles(driven.subtract(distance)).abs().compareTo(tolerance) > 0)
        .ifPresent(
            driven -> flags.add(flag(trip, "Distance", odometerSays(driven), plain(distance))));
    trip.driveMin()
        .filter(minutes -> tooFast(distance, minutes))
        .ifPresent(minutes -> flags.add(flag(trip, "Drive min", TOO_FAST, plain(minutes))));
  }

  private static Optional<BigDecimal> odometerDistance(Trip trip) {
    return trip.typedDistance()
        .flatMap(
            typed -> trip.odometerEnd().flatMap(end -> trip.odometerStart().map(end::subtract)));
  }

  private boolean tooFast(BigDecimal distance, BigDecimal minutes) {
    if (minutes.signum() <= 0 || fastest.isEmpty()) {
      return false;
    }
    BigDecimal perHour =
        unit.miles(distance).multiply(MINUTES).divide(minutes, MathContext.DECIMAL64);
    return perHour.compareTo(fastest.get()) > 0;
  }

  private void addDays(List<Trip> trips, List<MileageLog.Flag> flags) {
    TreeMap<LocalDate, BigDecimal> days = new TreeMap<>();
    for (Trip trip : trips) {
      BigDecimal driven = trip.distance().orElse(BigDecimal.ZERO);
      BigDecimal before = days.getOrDefault(trip.date(), BigDecimal.ZERO);
      BigDecimal after = before.add(driven);
      days.put(trip.date(), after);
      if (isFar(after) && !isFar(before)) {
        flags.add(flag(trip, "Distance", FAR, plain(driven)));
      }
    }
  }

  private boolean isFar(BigDecimal distance) {
    return furthestDay.filter(limit -> unit.miles(distance).compareTo(limit) > 0).isPresent();
  }

  /**
   * Gaps and overlaps between one vehicle's readings, its trips in the order of date, sheet and
   * row. A trip without readings fills the gap around it by its distance.
   */
  List<MileageLog.Flag> chain(List<Trip> ofVehicle) {
    List<MileageLog.Flag> flags = new ArrayList<>();
    Optional<BigDecimal> expected = Optional.empty();
    for (Trip trip : ofVehicle) {
      Optional<BigDecimal> before = expected;
      trip.odometerStart()
          .ifPresent(start -> before.ifPresent(end -> addStep(trip, end, start, flags)));
      expected =
          trip.odometerEnd()
              .or(() -> before.map(end -> end.add(trip.distance().orElse(BigDecimal.ZERO))));
    }
    return flags;
  }

  private void addStep(Trip trip, BigDecimal end, BigDecimal start, List<MileageLog.Flag> flags) {
    BigDecimal step = start.subtract(end);
    if (unit.miles(step).abs().compareTo(tolerance) <= 0) {
      return;
    }
    Wording what =
        step.signum() > 0
            ? Wording.of(
                "a gap of " + plain(step) + " since the trip before",
                "tax.odd.gap",
                step.stripTrailingZeros())
            : Wording.of(
                "an overlap of " + plain(step.negate()) + " with the trip before",
                "tax.odd.overlap",
                step.negate().stripTrailingZeros());
    flags.add(flag(trip, "Odometer start", what, plain(start)));
  }

  private static MileageLog.Flag flag(Trip trip, String heading, Wording what, String value) {
    return new MileageLog.Flag(trip.source(), heading, what, value);
  }

  private static Wording odometerSays(BigDecimal driven) {
    return Wording.of(
        "the odometer says " + plain(driven), "tax.odd.odometerSays", driven.stripTrailingZeros());
  }

  private static String text(Optional<BigDecimal> value) {
    return value.map(MileageChecks::plain).orElse("");
  }

  private static String plain(BigDecimal value) {
    return value.stripTrailingZeros().toPlainString();
  }
}

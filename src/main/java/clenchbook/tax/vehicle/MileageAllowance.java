package clenchbook.tax.vehicle;

import clenchbook.book.Names;
import clenchbook.book.Trip;
import clenchbook.tax.expenses.PurchaseJournal;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.Regime;
import clenchbook.values.money.LargestRemainder;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Business distance at the regime's money for a mile, by the day driven. Each rate's miles are
 * multiplied once and rounded half up; the amount is then split over the trips by largest
 * remainder, so that they add to it to the cent.
 *
 * @param items one for each business trip, on the vehicle's line
 * @param steps one for each rate used: its miles and amount
 */
public record MileageAllowance(List<LineItem> items, List<Step> steps) {
  /**
   * Miles at one rate.
   *
   * @param rate the rate
   * @param miles business miles at it
   * @param amount miles times rate, rounded
   */
  public record Step(Rate rate, BigDecimal miles, BigDecimal amount) {}

  /** A stretch of one trip at one rate. */
  private record Stretch(Trip trip, Rate rate, BigDecimal miles) {}

  static MileageAllowance none() {
    return new MileageAllowance(List.of(), List.of());
  }

  /**
   * The allowance of a whole tax year; trips on a day without a rate are left out and the lack is
   * remembered.
   */
  public static MileageAllowance of(
      List<Trip> trips, Regime regime, DistanceUnit unit, RateLookup rates, MinorUnit money) {
    List<Trip> driven =
        trips.stream()
            .filter(Trip::business)
            .filter(trip -> trip.distance().filter(distance -> distance.signum() > 0).isPresent())
            .sorted(Comparator.comparing(Trip::date).thenComparing(Trip::source))
            .toList();
    return switch (regime) {
      case US -> of(standard(driven, unit, rates), regime, money);
      case UK -> of(simplified(driven, unit, rates), regime, money);
      case PLAIN -> none();
    };
  }

  private static List<Stretch> standard(List<Trip> trips, DistanceUnit unit, RateLookup rates) {
    List<Stretch> stretches = new ArrayList<>();
    for (Trip trip : trips) {
      rates
          .find("us/mileage", "business", trip.date())
          .ifPresent(
              rate ->
                  stretches.add(
                      new Stretch(trip, rate, unit.miles(trip.distance().orElseThrow()))));
    }
    return stretches;
  }

  private static List<Stretch> simplified(List<Trip> trips, DistanceUnit unit, RateLookup rates) {
    List<Stretch> stretches = new ArrayList<>();
    BigDecimal soFar = BigDecimal.ZERO;
    for (Trip trip : trips) {
      BigDecimal miles = unit.miles(trip.distance().orElseThrow());
      if (isMotorcycle(trip, rates)) {
        rates
            .find("uk/mileage", "motorcycle", trip.date())
            .ifPresent(rate -> stretches.add(new Stretch(trip, rate, miles)));
      } else {
        stretches.addAll(firstAndFurther(trip, miles, soFar, rates));
        soFar = soFar.add(miles);
      }
    }
    return stretches;
  }

  private static boolean isMotorcycle(Trip trip, RateLookup rates) {
    String vehicle = Names.key(trip.vehicle()).toLowerCase(Locale.ROOT);
    return rates.inForce("uk/asset-classes", trip.date()).stream()
        .filter(row -> row.value().equals("motorcycle"))
        .anyMatch(row -> vehicle.contains(row.code()));
  }

  private static List<Stretch> firstAndFurther(
      Trip trip, BigDecimal miles, BigDecimal soFar, RateLookup rates) {
    Optional<Rate> first = rates.find("uk/mileage", "first miles", trip.date());
    Optional<Rate> further = rates.find("uk/mileage", "further miles", trip.date());
    Optional<Rate> limit = rates.find("uk/mileage", "first miles limit", trip.date());
    if (first.isEmpty() || further.isEmpty() || limit.isEmpty()) {
      return List.of();
    }
    BigDecimal room = limit.get().amount().subtract(soFar).max(BigDecimal.ZERO);
    BigDecimal within = miles.min(room);
    return List.of(
            new Stretch(trip, first.get(), within),
            new Stretch(trip, further.get(), miles.subtract(within)))
        .stream()
        .filter(stretch -> stretch.miles().signum() > 0)
        .toList();
  }

  private static MileageAllowance of(List<Stretch> stretches, Regime regime, MinorUnit money) {
    TreeMap<String, List<Stretch>> byRate = new TreeMap<>();
    stretches.forEach(
        stretch ->
            byRate
                .computeIfAbsent(
                    stretch.rate().code() + " " + stretch.rate().from(),
                    unused -> new ArrayList<>())
                .add(stretch));
    List<LineItem> parts = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    byRate.values().forEach(ofOne -> steps.add(step(ofOne, regime, money, parts)));
    return new MileageAllowance(merged(parts), List.copyOf(steps));
  }

  private static Step step(
      List<Stretch> ofOne, Regime regime, MinorUnit money, List<LineItem> parts) {
    Rate rate = ofOne.get(0).rate();
    List<BigDecimal> miles = ofOne.stream().map(Stretch::miles).toList();
    BigDecimal sum = miles.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal amount = money.round(sum.multiply(rate.amount()));
    List<BigDecimal> split = LargestRemainder.split(amount, miles, money);
    for (int i = 0; i < split.size(); i++) {
      parts.add(item(ofOne.get(i).trip(), regime, split.get(i), money));
    }
    return new Step(rate, sum, amount);
  }

  private static LineItem item(Trip trip, Regime regime, BigDecimal amount, MinorUnit money) {
    return new LineItem(
        PurchaseJournal.vehicleCode(regime),
        trip.source().sheet(),
        trip.source().row(),
        trip.date(),
        route(trip),
        amount,
        money.zero(),
        amount);
  }

  private static String route(Trip trip) {
    return trip.from().isEmpty() && trip.to().isEmpty()
        ? trip.purpose()
        : trip.from() + " to " + trip.to();
  }

  /** One row for each trip, where a trip crosses from one rate to the next. */
  private static List<LineItem> merged(List<LineItem> parts) {
    TreeMap<String, LineItem> byRow = new TreeMap<>();
    for (LineItem part : parts) {
      String key = part.date() + " " + part.sheet() + " " + part.row();
      byRow.merge(key, part, MileageAllowance::together);
    }
    return byRow.values().stream().sorted(LineItem.BY_DATE).toList();
  }

  private static LineItem together(LineItem one, LineItem other) {
    BigDecimal amount = one.net().add(other.net());
    return new LineItem(
        one.code(), one.sheet(), one.row(), one.date(), one.who(), amount, one.tax(), amount);
  }

  /** What the rates give in all. */
  BigDecimal amount(MinorUnit money) {
    return items.stream().map(LineItem::net).reduce(money.zero(), BigDecimal::add);
  }
}

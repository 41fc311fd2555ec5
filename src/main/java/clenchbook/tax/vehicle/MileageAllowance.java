package clenchbook.tax.vehicle;

import clenchbook.book.Trip;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.Rate;
import clenchbook.values.money.LargestRemainder;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

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
   * Distance at one rate.
   *
   * @param rate the rate
   * @param distance business distance at it, in the unit of the rate
   * @param amount distance times rate, rounded
   */
  public record Step(Rate rate, BigDecimal distance, BigDecimal amount) {}

  /**
   * A stretch of one trip at one rate.
   *
   * @param trip the trip
   * @param rate the money for one mile or kilometre
   * @param distance how far, in the unit of the rate
   */
  public record Stretch(Trip trip, Rate rate, BigDecimal distance) {}

  /** No money for a mile: the regime has none, or nobody drove. */
  public static MileageAllowance none() {
    return new MileageAllowance(List.of(), List.of());
  }

  /** The business trips of some distance, by date, sheet and row. */
  public static List<Trip> driven(List<Trip> trips) {
    return trips.stream()
        .filter(Trip::business)
        .filter(trip -> trip.distance().filter(distance -> distance.signum() > 0).isPresent())
        .sorted(Comparator.comparing(Trip::date).thenComparing(Trip::source))
        .toList();
  }

  /**
   * Each trip as one stretch, at the rate of its day.
   *
   * @param driven the trips
   * @param rate a trip's rate; a trip without one is left out
   * @param distance how far a trip was, in the unit of the rate
   */
  public static List<Stretch> stretches(
      List<Trip> driven, Function<Trip, Optional<Rate>> rate, Function<Trip, BigDecimal> distance) {
    return driven.stream()
        .flatMap(
            trip ->
                rate.apply(trip).stream()
                    .map(found -> new Stretch(trip, found, distance.apply(trip))))
        .toList();
  }

  /**
   * The allowance of some stretches.
   *
   * @param stretches the stretches, in any order
   * @param code the code of the vehicle's line
   * @param money where amounts are rounded
   */
  public static MileageAllowance of(List<Stretch> stretches, String code, MinorUnit money) {
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
    byRate.values().forEach(ofOne -> steps.add(step(ofOne, code, money, parts)));
    return new MileageAllowance(merged(parts), List.copyOf(steps));
  }

  private static Step step(
      List<Stretch> ofOne, String code, MinorUnit money, List<LineItem> parts) {
    Rate rate = ofOne.get(0).rate();
    List<BigDecimal> distances = ofOne.stream().map(Stretch::distance).toList();
    BigDecimal sum = distances.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal amount = money.round(sum.multiply(rate.amount()));
    List<BigDecimal> split = LargestRemainder.split(amount, distances, money);
    for (int i = 0; i < split.size(); i++) {
      parts.add(item(ofOne.get(i).trip(), code, split.get(i), money));
    }
    return new Step(rate, sum, amount);
  }

  private static LineItem item(Trip trip, String code, BigDecimal amount, MinorUnit money) {
    return new LineItem(
        code,
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

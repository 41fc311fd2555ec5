package clenchbook.costing;

import clenchbook.book.Place;
import clenchbook.book.Setting;
import clenchbook.book.Trip;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.Job;
import clenchbook.values.Basis;
import clenchbook.values.money.LargestRemainder;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Shares each day's driving over its jobs: over the places in proportion to their distance from
 * home, then equally over the jobs at each. A day without trips counts out and back for each place,
 * which overstates rounds.
 */
final class TravelCosts {
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  private final BookIndex index;
  private final MinorUnit unit;
  private final BigDecimal costPerDistance;
  private final Map<LocalDate, List<Trip>> trips = new TreeMap<>();
  private final Map<Job, Share> shares = new IdentityHashMap<>();

  /** A job's part of the day's driving. */
  record Share(BigDecimal cost, BigDecimal minutes, Basis basis) {}

  private TravelCosts(BookIndex index) {
    this.index = index;
    this.unit = index.book().settings().minorUnit();
    this.costPerDistance = index.book().settings().number(Setting.VEHICLE_COST);
    for (Trip trip : index.book().trips()) {
      if (trip.business()) {
        trips.computeIfAbsent(trip.date(), unused -> new ArrayList<>()).add(trip);
      }
    }
  }

  static Map<Job, Share> of(BookIndex index, Map<LocalDate, List<Stop>> days) {
    TravelCosts costs = new TravelCosts(index);
    days.forEach(costs::day);
    return costs.shares;
  }

  private void day(LocalDate date, List<Stop> stops) {
    List<Trip> driven = trips.getOrDefault(date, List.of());
    if (driven.isEmpty()) {
      stops.forEach(this::outAndBack);
    } else {
      driven(stops, driven);
    }
  }

  private void driven(List<Stop> stops, List<Trip> driven) {
    BigDecimal distance = sum(driven, Trip::distance);
    BigDecimal minutes = sum(driven, Trip::driveMin);
    List<BigDecimal> weights = weights(stops);
    List<BigDecimal> costs =
        LargestRemainder.split(distance.multiply(costPerDistance), weights, unit);
    BigDecimal total = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    for (int index = 0; index < stops.size(); index++) {
      BigDecimal part = minutes.multiply(weights.get(index)).divide(total, MathContext.DECIMAL128);
      share(stops.get(index), costs.get(index), part, Basis.MEASURED);
    }
  }

  private static BigDecimal sum(List<Trip> trips, Function<Trip, Optional<BigDecimal>> figure) {
    return trips.stream()
        .map(trip -> figure.apply(trip).orElse(BigDecimal.ZERO))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** The places' distances; equal weights when any is missing or all are nothing. */
  private List<BigDecimal> weights(List<Stop> stops) {
    List<Optional<BigDecimal>> distances =
        stops.stream().map(stop -> place(stop).flatMap(Place::distance)).toList();
    boolean missing = distances.stream().anyMatch(Optional::isEmpty);
    boolean somewhere = distances.stream().flatMap(Optional::stream).anyMatch(d -> d.signum() > 0);
    return missing || !somewhere
        ? Collections.nCopies(stops.size(), BigDecimal.ONE)
        : distances.stream().flatMap(Optional::stream).toList();
  }

  private void outAndBack(Stop stop) {
    Optional<BigDecimal> distance = place(stop).flatMap(Place::distance);
    Optional<BigDecimal> minutes = place(stop).flatMap(Place::driveMin);
    BigDecimal cost =
        unit.round(distance.orElse(BigDecimal.ZERO).multiply(TWO).multiply(costPerDistance));
    Basis basis = distance.isPresent() || minutes.isPresent() ? Basis.STANDARD : Basis.DEFAULT;
    share(stop, cost, minutes.orElse(BigDecimal.ZERO).multiply(TWO), basis);
  }

  private Optional<Place> place(Stop stop) {
    return stop.place().isEmpty() ? Optional.empty() : index.place(stop.place());
  }

  private void share(Stop stop, BigDecimal cost, BigDecimal minutes, Basis basis) {
    int count = stop.jobs().size();
    List<BigDecimal> costs = LargestRemainder.splitEqually(cost, count, unit);
    BigDecimal each = minutes.divide(BigDecimal.valueOf(count), MathContext.DECIMAL128);
    for (int index = 0; index < count; index++) {
      shares.put(stop.jobs().get(index), new Share(costs.get(index), each, basis));
    }
  }
}

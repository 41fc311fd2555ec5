package clenchbook.tax.vehicle;

import clenchbook.book.Names;
import clenchbook.book.Place;
import clenchbook.book.Trip;
import clenchbook.jobs.Job;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What must have been driven on a day with visits but without a business trip in the log: each
 * place's own way out and back. Never counted, because nobody wrote it down at the time; shown
 * apart so that the farrier can correct the log.
 *
 * @param date the day
 * @param place the place
 * @param distance there and back, in the book's unit; empty where Places has no distance
 */
public record Reconstructed(LocalDate date, String place, Optional<BigDecimal> distance) {

  /** One entry for each day with visits and without a business trip in the log, by date. */
  public static List<Reconstructed> of(
      List<Job> jobs, List<Trip> trips, List<Place> places, Period period) {
    Set<LocalDate> logged =
        trips.stream().filter(Trip::business).map(Trip::date).collect(Collectors.toSet());
    TreeMap<LocalDate, Set<String>> stops = new TreeMap<>();
    jobs.stream()
        .filter(job -> period.holds(job.date()) && !job.cancelled() && !logged.contains(job.date()))
        .filter(job -> !job.place().isEmpty())
        .forEach(
            job ->
                stops
                    .computeIfAbsent(job.date(), unused -> new TreeSet<>(Names.ORDER))
                    .add(job.place()));
    Map<String, BigDecimal> oneWay = new HashMap<>();
    places.forEach(
        place -> place.distance().ifPresent(way -> oneWay.put(Names.key(place.name()), way)));
    List<Reconstructed> rows = new ArrayList<>();
    stops.forEach((day, names) -> names.forEach(name -> rows.add(row(day, name, oneWay))));
    return List.copyOf(rows);
  }

  private static Reconstructed row(LocalDate day, String place, Map<String, BigDecimal> oneWay) {
    Optional<BigDecimal> way = Optional.ofNullable(oneWay.get(Names.key(place)));
    return new Reconstructed(
        day, place, way.map(distance -> distance.multiply(BigDecimal.valueOf(2))));
  }

  /** The distance of all rows, those without one at nothing. */
  public static BigDecimal total(List<Reconstructed> rows) {
    return rows.stream()
        .map(row -> row.distance().orElse(BigDecimal.ZERO))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}

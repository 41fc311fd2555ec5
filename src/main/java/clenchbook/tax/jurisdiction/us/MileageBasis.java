package clenchbook.tax.jurisdiction.us;

import clenchbook.book.Asset;
import clenchbook.book.Names;
import clenchbook.book.Trip;
import clenchbook.tax.assets.TakenByMileage;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.DistanceUnit;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.texts.Message;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * How far the standard mileage rate has lowered a vehicle's basis: each year's business miles times
 * the depreciation part of that year's rate (IRS Notice 2022-03, section 4, as reported;
 * Publication 463, chapter 4). It is known only where the log reaches back to the purchase.
 */
final class MileageBasis {
  private static final int DAYS_TO_THE_FIRST_TRIP = 31;

  private final List<Asset> vehicles;
  private final List<Trip> driven;
  private final DistanceUnit unit;
  private final RateLookup rates;
  private final MinorUnit money;

  /**
   * Over a book's vehicles and trips.
   *
   * @param vehicles every vehicle of the book, sold ones too
   * @param trips every trip, of any year
   * @param unit the book's unit of distance
   */
  MileageBasis(
      List<Asset> vehicles,
      List<Trip> trips,
      DistanceUnit unit,
      RateLookup rates,
      MinorUnit money) {
    this.vehicles = vehicles;
    this.driven = MileageAllowance.driven(trips);
    this.unit = unit;
    this.rates = rates;
    this.money = money;
  }

  /** Whether the log has a business trip of this vehicle up to a day. */
  boolean isDriven(Asset vehicle, LocalDate lastDay) {
    return driven.stream()
        .anyMatch(trip -> owned(vehicle, trip.date(), lastDay) && whose(trip).contains(vehicle));
  }

  /** What its miles from the day bought to {@code lastDay}, or to the day sold, have taken. */
  TakenByMileage of(Asset vehicle, LocalDate lastDay) {
    List<Trip> own = new ArrayList<>();
    int unclear = 0;
    for (Trip trip : driven) {
      if (owned(vehicle, trip.date(), lastDay)) {
        List<Asset> possible = whose(trip);
        if (possible.equals(List.of(vehicle))) {
          own.add(trip);
        } else if (possible.contains(vehicle)) {
          unclear++;
        }
      }
    }
    if (unclear > 0) {
      return unknown(
          Wording.of(
              unclear + " trips don't say which of several vehicles was driven: name it in Trips",
              "america.unknown.trips",
              unclear));
    }
    return missingYears(vehicle, own, lastDay).orElseGet(() -> taken(vehicle, own));
  }

  private static boolean owned(Asset vehicle, LocalDate day, LocalDate lastDay) {
    return !day.isBefore(vehicle.bought())
        && !day.isAfter(vehicle.sold().orElse(lastDay))
        && !day.isAfter(lastDay);
  }

  /** The vehicles owned that day that the trip may have been driven with. */
  private List<Asset> whose(Trip trip) {
    List<Asset> owned =
        vehicles.stream().filter(one -> owned(one, trip.date(), LocalDate.MAX)).toList();
    List<Asset> named =
        trip.vehicle().isBlank()
            ? owned
            : owned.stream().filter(one -> isNamed(one, trip.vehicle())).toList();
    return named.isEmpty() ? owned : named;
  }

  private static boolean isNamed(Asset vehicle, String word) {
    String name = Names.key(vehicle.name());
    String wanted = Names.key(word);
    return name.contains(wanted) || wanted.contains(name);
  }

  /** Why the miles are not known: the log begins too late, or a whole year lies without a trip. */
  private Optional<TakenByMileage> missingYears(Asset vehicle, List<Trip> own, LocalDate lastDay) {
    TreeSet<Integer> years = new TreeSet<>();
    own.forEach(trip -> years.add(trip.date().getYear()));
    LocalDate bought = vehicle.bought();
    LocalDate soon = bought.plusDays(DAYS_TO_THE_FIRST_TRIP);
    boolean fromTheStart =
        years.contains(bought.getYear())
            || own.stream().anyMatch(trip -> !trip.date().isAfter(soon));
    if (!fromTheStart) {
      return Optional.of(
          unknown(
              Wording.of(
                  "the log does not reach back to " + bought + ", the day bought",
                  "america.unknown.reachesBack",
                  bought)));
    }
    int last = vehicle.sold().orElse(lastDay).getYear();
    for (int year = bought.getYear() + 1; year < last; year++) {
      if (!years.contains(year)) {
        return Optional.of(
            unknown(
                Wording.of(
                    "the log has no trip of " + year,
                    "america.unknown.year",
                    String.valueOf(year))));
      }
    }
    return Optional.empty();
  }

  private TakenByMileage taken(Asset vehicle, List<Trip> own) {
    Map<Rate, BigDecimal> miles = new LinkedHashMap<>();
    for (Trip trip : own) {
      Optional<Rate> part = rates.ask("us/mileage", "depreciation part", trip.date());
      if (part.isEmpty()) {
        return unknown(
            Wording.of(
                "no depreciation part of the rate is known for " + trip.date(),
                "america.unknown.part",
                trip.date()));
      }
      miles.merge(part.get(), unit.miles(trip.distance().orElseThrow()), BigDecimal::add);
    }
    BigDecimal amount =
        miles.entrySet().stream()
            .map(entry -> money.round(entry.getValue().multiply(entry.getKey().amount())))
            .reduce(money.zero(), BigDecimal::add);
    return new TakenByMileage(amount, Wording.NONE, remark(vehicle, own));
  }

  private static Message remark(Asset vehicle, List<Trip> own) {
    LocalDate soon = vehicle.bought().plusDays(DAYS_TO_THE_FIRST_TRIP);
    return own.stream()
        .findFirst()
        .map(Trip::date)
        .filter(first -> first.isAfter(soon))
        .map(first -> Message.of("america.note.firstTrip", vehicle.bought(), first))
        .orElse(Message.NONE);
  }

  private TakenByMileage unknown(Wording why) {
    return new TakenByMileage(money.zero(), why, Message.NONE);
  }
}

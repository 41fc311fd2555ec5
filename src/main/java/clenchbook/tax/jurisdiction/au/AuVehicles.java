package clenchbook.tax.jurisdiction.au;

import clenchbook.book.Asset;
import clenchbook.book.Names;
import clenchbook.book.Trip;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.Fleet;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.year.YearEndInput;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Which vehicle is a car, and what its business kilometres come to: cents per kilometre are for
 * cars alone, for each car up to the cap of its year.
 */
final class AuVehicles {
  static final String CAR = "car";
  static final String OTHER = "goods vehicle";

  private final Fleet fleet;
  private final RateLookup rates;

  AuVehicles(YearEndInput input, RateLookup rates) {
    this.fleet = new Fleet(AuJurisdiction.REGIME, input, rates);
    this.rates = rates;
  }

  /** {@code car}, {@code goods vehicle} or {@code equipment}. */
  String kind(Asset asset) {
    return fleet.kind(asset);
  }

  /**
   * Whether a trip was driven with a car: by the asset of its name, else by the words of its
   * Vehicle cell, else by the only vehicle in Assets; a car where nothing says otherwise.
   */
  boolean isCar(Trip trip) {
    Stream<String> owned =
        Names.key(trip.vehicle()).isEmpty()
            ? fleet.assets().stream().map(this::kind)
            : fleet.named(trip);
    Optional<String> kind =
        owned
            .filter(AuVehicles::isVehicle)
            .reduce((one, other) -> one.equals(OTHER) && other.equals(OTHER) ? OTHER : CAR)
            .or(() -> byWords(trip));
    return !kind.filter(OTHER::equals).isPresent();
  }

  private Optional<String> byWords(Trip trip) {
    return fleet
        .worded(trip)
        .filter(AuVehicles::isVehicle)
        .reduce((one, other) -> one.equals(OTHER) ? one : other);
  }

  private static boolean isVehicle(String kind) {
    return !kind.equals(Fleet.EQUIPMENT);
  }

  /** The allowance of a year's business trips. */
  MileageAllowance allowance(List<Trip> driven, MinorUnit money) {
    List<MileageAllowance.Stretch> stretches = new ArrayList<>();
    TreeMap<String, List<Trip>> byCar = new TreeMap<>();
    driven.stream()
        .filter(this::isCar)
        .forEach(
            trip ->
                byCar
                    .computeIfAbsent(Names.key(trip.vehicle()), unused -> new ArrayList<>())
                    .add(trip));
    byCar.values().forEach(trips -> stretches.addAll(ofCar(trips)));
    return MileageAllowance.of(stretches, AuJurisdiction.REGIME.codes().vehicle(), money);
  }

  private List<MileageAllowance.Stretch> ofCar(List<Trip> trips) {
    List<MileageAllowance.Stretch> stretches = new ArrayList<>();
    Optional<Rate> cap = rates.find("au/vehicle", "cap", trips.get(0).date());
    List<BigDecimal> counted =
        CentsPerKilometre.counted(
            trips.stream().map(this::kilometres).toList(),
            cap.map(Rate::amount).orElse(BigDecimal.ZERO));
    for (int i = 0; i < trips.size(); i++) {
      Trip trip = trips.get(i);
      BigDecimal kilometres = counted.get(i);
      if (kilometres.signum() > 0) {
        rates
            .find("au/vehicle", "business", trip.date())
            .ifPresent(rate -> stretches.add(new MileageAllowance.Stretch(trip, rate, kilometres)));
      }
    }
    return stretches;
  }

  /** How far the trip was, in kilometres. */
  BigDecimal kilometres(Trip trip) {
    return fleet.kilometres(trip);
  }
}

package clenchbook.tax.jurisdiction.uk;

import clenchbook.book.Names;
import clenchbook.book.Trip;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.DistanceUnit;
import clenchbook.tax.vehicle.MileageAllowance;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Simplified expenses for vehicles: one rate for the first miles of the tax year, another for those
 * after, a third for a motorcycle, whose miles use up none of the first.
 */
final class SimplifiedMileage {
  private static final String TABLE = "uk/mileage";

  private final DistanceUnit unit;
  private final RateLookup rates;

  SimplifiedMileage(DistanceUnit unit, RateLookup rates) {
    this.unit = unit;
    this.rates = rates;
  }

  /** The stretches of the trips of one tax year, in the order of the trips. */
  List<MileageAllowance.Stretch> of(List<Trip> trips) {
    List<MileageAllowance.Stretch> stretches = new ArrayList<>();
    BigDecimal soFar = BigDecimal.ZERO;
    for (Trip trip : trips) {
      BigDecimal miles = unit.miles(trip.distance().orElseThrow());
      if (isMotorcycle(trip)) {
        rates
            .find(TABLE, "motorcycle", trip.date())
            .ifPresent(rate -> stretches.add(new MileageAllowance.Stretch(trip, rate, miles)));
      } else {
        stretches.addAll(firstAndFurther(trip, miles, soFar));
        soFar = soFar.add(miles);
      }
    }
    return stretches;
  }

  private boolean isMotorcycle(Trip trip) {
    String vehicle = Names.key(trip.vehicle()).toLowerCase(Locale.ROOT);
    return rates.words("uk/asset-classes", trip.date()).stream()
        .filter(row -> row.value().equals(AssetKind.MOTORCYCLE.word()))
        .anyMatch(row -> vehicle.contains(row.code()));
  }

  private List<MileageAllowance.Stretch> firstAndFurther(
      Trip trip, BigDecimal miles, BigDecimal soFar) {
    Optional<Rate> first = rates.find(TABLE, "first miles", trip.date());
    Optional<Rate> further = rates.find(TABLE, "further miles", trip.date());
    Optional<Rate> limit = rates.find(TABLE, "first miles limit", trip.date());
    if (first.isEmpty() || further.isEmpty() || limit.isEmpty()) {
      return List.of();
    }
    BigDecimal room = limit.get().amount().subtract(soFar).max(BigDecimal.ZERO);
    BigDecimal within = miles.min(room);
    return List.of(
            new MileageAllowance.Stretch(trip, first.get(), within),
            new MileageAllowance.Stretch(trip, further.get(), miles.subtract(within)))
        .stream()
        .filter(stretch -> stretch.distance().signum() > 0)
        .toList();
  }
}

package clenchbook.tax.jurisdiction.de;

import clenchbook.book.Asset;
import clenchbook.book.Trip;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.Fleet;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.year.YearEndInput;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which vehicles belong to the business, and what business trips with a vehicle of private property
 * come to. A vehicle used more than half for business belongs to it, and its actual cost counts;
 * where Assets has none such, each kilometre driven counts at a fixed sum.
 */
final class DeVehicles {
  /** The code of the line for trips with a vehicle that is no asset of the business. */
  static final String PRIVATE = "private vehicle";

  static final String MOTORCYCLE = "motorcycle";
  private static final Set<String> CLASSES = Set.of("car", "truck", MOTORCYCLE);
  private static final BigDecimal HALF = BigDecimal.valueOf(50);
  private static final BigDecimal ALL = BigDecimal.valueOf(100);

  private final Fleet fleet;
  private final RateLookup rates;

  DeVehicles(YearEndInput input, RateLookup rates) {
    this.fleet = new Fleet(DeJurisdiction.REGIME, input, rates);
    this.rates = rates;
  }

  /** The class of an asset by its Class cell, else its name; {@code equipment} for all else. */
  String kind(Asset asset) {
    return fleet.kind(asset);
  }

  boolean isVehicle(Asset asset) {
    return CLASSES.contains(kind(asset));
  }

  /** Whether a vehicle belongs to the business: used more than half for it. */
  boolean isBusiness(Asset asset) {
    return isVehicle(asset) && asset.businessUsePercent().orElse(ALL).compareTo(HALF) > 0;
  }

  /** Whether the business owned a vehicle on any day of a year. */
  boolean ownedIn(Period year) {
    return fleet.assets().stream()
        .filter(this::isBusiness)
        .filter(asset -> !asset.bought().isAfter(year.last()))
        .anyMatch(asset -> asset.sold().filter(day -> day.isBefore(year.first())).isEmpty());
  }

  /** The allowance of a year's business trips; none where the business owns a vehicle. */
  MileageAllowance allowance(List<Trip> driven, Period year, MinorUnit money) {
    if (ownedIn(year)) {
      return MileageAllowance.none();
    }
    return MileageAllowance.of(
        MileageAllowance.stretches(driven, this::rate, fleet::kilometres), PRIVATE, money);
  }

  private Optional<Rate> rate(Trip trip) {
    return rates.find("de/vehicle", isMotorcycle(trip) ? MOTORCYCLE : "business", trip.date());
  }

  private boolean isMotorcycle(Trip trip) {
    return Stream.concat(fleet.named(trip), fleet.worded(trip)).anyMatch(MOTORCYCLE::equals);
  }
}

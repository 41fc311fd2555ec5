package clenchbook.tax.jurisdiction.de;

import clenchbook.book.Asset;
import clenchbook.book.Names;
import clenchbook.book.Trip;
import clenchbook.tax.assets.AssetClasses;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.DistanceUnit;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which vehicles belong to the business, and what business trips with a vehicle of private property
 * come to. A vehicle used more than half for business belongs to it, and its actual cost counts;
 * where Assets has none such, each kilometre driven counts at a fixed sum.
 */
final class DeVehicles {
  /** The code of the line for trips with a vehicle that is no asset of the business. */
  static final String PRIVATE = "private vehicle";

  private static final Set<String> CLASSES = Set.of("car", "truck", "motorcycle");
  private static final BigDecimal HALF = BigDecimal.valueOf(50);
  private static final BigDecimal ALL = BigDecimal.valueOf(100);

  private final List<Asset> assets;
  private final DistanceUnit unit;
  private final RateLookup rates;
  private final AssetClasses classes;

  DeVehicles(List<Asset> assets, DistanceUnit unit, RateLookup rates) {
    this.assets = assets;
    this.unit = unit;
    this.rates = rates;
    this.classes = new AssetClasses(DeJurisdiction.REGIME, rates);
  }

  /** The class of an asset by its Class cell, else its name; {@code equipment} for all else. */
  String kind(Asset asset) {
    return classes.find(asset).orElse("equipment");
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
    return assets.stream()
        .filter(this::isBusiness)
        .filter(asset -> !asset.bought().isAfter(year.last()))
        .anyMatch(asset -> asset.sold().filter(day -> day.isBefore(year.first())).isEmpty());
  }

  /** The allowance of a year's business trips; none where the business owns a vehicle. */
  MileageAllowance allowance(List<Trip> driven, Period year, MinorUnit money) {
    if (ownedIn(year)) {
      return MileageAllowance.none();
    }
    List<MileageAllowance.Stretch> stretches = new ArrayList<>();
    for (Trip trip : driven) {
      rate(trip)
          .ifPresent(
              rate ->
                  stretches.add(
                      new MileageAllowance.Stretch(
                          trip, rate, unit.kilometres(trip.distance().orElse(BigDecimal.ZERO)))));
    }
    return MileageAllowance.of(stretches, PRIVATE, money);
  }

  private Optional<Rate> rate(Trip trip) {
    return rates.find("de/vehicle", isMotorcycle(trip) ? "motorcycle" : "business", trip.date());
  }

  private boolean isMotorcycle(Trip trip) {
    String name = Names.key(trip.vehicle());
    boolean owned =
        assets.stream()
            .filter(asset -> Names.key(asset.name()).equals(name))
            .anyMatch(asset -> kind(asset).equals("motorcycle"));
    return owned
        || rates.words(DeJurisdiction.REGIME.table("asset-classes"), trip.date()).stream()
            .filter(row -> row.value().equals("motorcycle"))
            .anyMatch(row -> (" " + name + " ").contains(" " + row.code() + " "));
  }
}

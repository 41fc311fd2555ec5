package clenchbook.tax.jurisdiction.us;

import clenchbook.book.Asset;
import clenchbook.book.Book;
import clenchbook.book.Setting;
import clenchbook.tax.assets.AssetClasses;
import clenchbook.tax.assets.AssetList;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.DistanceUnit;
import clenchbook.tax.year.YearEndInput;
import clenchbook.values.money.MinorUnit;
import java.time.LocalDate;
import java.util.List;

/**
 * The asset register of the United States: by the percentage tables, and vehicles on the standard
 * mileage rate by their miles, because that rate holds their depreciation already.
 */
final class UsAssets {
  private final YearEndInput input;
  private final Book book;
  private final RateLookup rates;
  private final MinorUnit unit;
  private final AssetClasses classes;

  UsAssets(YearEndInput input, RateLookup rates) {
    this.input = input;
    this.book = input.book();
    this.rates = rates;
    this.unit = book.settings().minorUnit();
    this.classes = new AssetClasses(input.taxYear().regime(), rates);
  }

  /** All of them by the tables, vehicles too: what the actual cost of a vehicle would bring. */
  List<DepreciatedAsset> byTables() {
    return new Depreciation(book.assets(), input.taxYear(), rates, unit).register();
  }

  /**
   * The register.
   *
   * @param byMileage whether this year's vehicles count by mileage; one sold before its first trip
   *     of the year goes by the trips of the years before
   */
  List<DepreciatedAsset> register(boolean byMileage) {
    MileageBasis miles = miles();
    LocalDate lastDay = input.taxYear().last();
    List<Asset> byTable =
        book.assets().stream()
            .filter(
                asset ->
                    !classes.isVehicle(asset) || !(byMileage || miles.isDriven(asset, lastDay)))
            .toList();
    Depreciation tables = new Depreciation(byTable, input.taxYear(), rates, unit);
    return AssetList.until(lastDay, book.assets()).stream()
        .map(
            asset ->
                byTable.contains(asset)
                    ? tables.depreciated(asset)
                    : DepreciatedAsset.byMileage(
                        asset, AssetList.basis(asset, unit), "vehicle", miles.of(asset, lastDay)))
        .toList();
  }

  private MileageBasis miles() {
    List<Asset> vehicles = book.assets().stream().filter(classes::isVehicle).toList();
    DistanceUnit distance = DistanceUnit.of(book.settings().text(Setting.DISTANCE_UNIT));
    return new MileageBasis(vehicles, book.trips(), distance, rates, unit);
  }
}

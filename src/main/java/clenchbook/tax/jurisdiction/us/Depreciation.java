package clenchbook.tax.jurisdiction.us;

import clenchbook.book.Asset;
import clenchbook.tax.assets.AssetClasses;
import clenchbook.tax.assets.AssetList;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.TaxYear;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Depreciation by the percentage tables of IRS Publication 946 (half-year, or mid-quarter where
 * more than the test's share of a year's cost was placed in service in its last quarter). The date
 * bought stands for the date placed in service. Section 179 and bonus depreciation are elections
 * and are not computed.
 *
 * <p>Each year's figure is the business part of the cost times the table's percentage, rounded half
 * up; the year of sale takes the convention's share of it.
 */
final class Depreciation {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private final RateLookup rates;
  private final MinorUnit unit;
  private final TaxYear taxYear;
  private final TreeMap<Integer, Boolean> midQuarter = new TreeMap<>();
  private final List<Asset> assets;
  private final AssetClasses classes;

  Depreciation(List<Asset> assets, TaxYear taxYear, RateLookup rates, MinorUnit unit) {
    this.assets = assets;
    this.taxYear = taxYear;
    this.rates = rates;
    this.unit = unit;
    this.classes = new AssetClasses(taxYear.regime(), rates);
  }

  /** The register: every asset bought up to the year's end, by date bought, sheet and row. */
  List<DepreciatedAsset> register() {
    return AssetList.until(taxYear.last(), assets).stream().map(this::depreciated).toList();
  }

  /** One asset by the tables. */
  DepreciatedAsset depreciated(Asset asset) {
    Optional<String> found = classes.find(asset);
    boolean vehicle = classes.isVehicle(asset);
    if (found.isEmpty() || rates.beginsAfter("us/depreciation", asset.bought())) {
      return DepreciatedAsset.without(asset, basis(asset), "", vehicle);
    }
    String kind = found.get().equals("vehicle") ? "5-year" : found.get();
    Convention convention = convention(asset, vehicle);
    List<BigDecimal> years = new ArrayList<>();
    for (int year = yearOf(asset.bought()); year <= taxYear.year(); year++) {
      years.add(figure(asset, kind, convention, year));
    }
    BigDecimal thisYear = years.isEmpty() ? unit.zero() : years.remove(years.size() - 1);
    BigDecimal before = years.stream().reduce(unit.zero(), BigDecimal::add);
    return new DepreciatedAsset(
        asset, kind, convention.code(), vehicle, basis(asset), before, thisYear, Optional.empty());
  }

  private Convention convention(Asset asset, boolean vehicle) {
    if (vehicle && isUsedHalf(asset)) {
      return Convention.STRAIGHT_LINE;
    }
    return isMidQuarter(yearOf(asset.bought()))
        ? Convention.midQuarter(quarterOf(asset.bought()))
        : Convention.HALF_YEAR;
  }

  private boolean isUsedHalf(Asset asset) {
    return rates
        .find("us/depreciation", "more than half", asset.bought())
        .filter(rate -> use(asset).compareTo(rate.amount()) <= 0)
        .isPresent();
  }

  private BigDecimal figure(Asset asset, String kind, Convention convention, int year) {
    int bought = yearOf(asset.bought());
    Optional<Integer> sold = asset.sold().map(this::yearOf);
    if (sold.filter(when -> when < year || when == bought).isPresent()) {
      return unit.zero();
    }
    String code = kind + " " + convention.code() + " " + (year - bought + 1);
    BigDecimal full =
        rates
            .ask("us/depreciation", code, asset.bought())
            .map(rate -> unit.round(basis(asset).multiply(rate.factor())))
            .orElseGet(unit::zero);
    return sold.filter(when -> when == year).isPresent() ? lastYear(asset, convention, full) : full;
  }

  private BigDecimal lastYear(Asset asset, Convention convention, BigDecimal full) {
    Convention sold =
        convention.isMidQuarter()
            ? Convention.midQuarter(quarterOf(asset.sold().orElseThrow()))
            : Convention.HALF_YEAR;
    return rates
        .find("us/depreciation", "last year " + sold.code(), asset.bought())
        .map(rate -> unit.round(full.multiply(rate.factor())))
        .orElseGet(unit::zero);
  }

  /** Whether more than the test's share of the year's cost came in its last quarter. */
  private boolean isMidQuarter(int year) {
    Boolean known = midQuarter.get(year);
    if (known != null) {
      return known;
    }
    boolean quarters =
        rates
            .find("us/depreciation", "mid-quarter test", LocalDate.of(year, 12, 31))
            .filter(
                test -> lastQuarter(year).compareTo(wholeYear(year).multiply(test.factor())) > 0)
            .isPresent();
    midQuarter.put(year, quarters);
    return quarters;
  }

  private BigDecimal wholeYear(int year) {
    return boughtIn(year, 0);
  }

  private BigDecimal lastQuarter(int year) {
    return boughtIn(year, 4);
  }

  private BigDecimal boughtIn(int year, int quarter) {
    return assets.stream()
        .filter(asset -> yearOf(asset.bought()) == year && classes.find(asset).isPresent())
        .filter(asset -> quarter == 0 || quarterOf(asset.bought()) == quarter)
        .filter(asset -> asset.sold().map(this::yearOf).filter(sold -> sold == year).isEmpty())
        .map(this::basis)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static BigDecimal use(Asset asset) {
    return asset.businessUsePercent().orElse(HUNDRED);
  }

  private BigDecimal basis(Asset asset) {
    return AssetList.basis(asset, unit);
  }

  private int yearOf(LocalDate day) {
    return taxYear.yearOf(day);
  }

  private int quarterOf(LocalDate day) {
    LocalDate start = taxYear.first().withYear(yearOf(day));
    return (int) ChronoUnit.MONTHS.between(start, day) / 3 + 1;
  }
}

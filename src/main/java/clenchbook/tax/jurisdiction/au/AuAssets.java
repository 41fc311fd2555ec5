package clenchbook.tax.jurisdiction.au;

import clenchbook.book.Asset;
import clenchbook.tax.assets.AssetList;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.TaxYear;
import clenchbook.values.Period;
import clenchbook.values.money.LargestRemainder;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The simplified depreciation of small business: what costs less than the limit of its day is
 * deducted at once, all else goes through the small business pool. Cars that count by kilometre
 * stay out. Whether the business may and did choose these rules is the preparer's to say.
 */
final class AuAssets {
  static final String AT_ONCE = "written off";
  static final String POOL = "small business pool";
  static final String IN_FULL = "at once";

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private final List<Asset> assets;
  private final AuVehicles vehicles;
  private final TaxYear taxYear;
  private final boolean byKilometre;
  private final RateLookup rates;
  private final MinorUnit unit;

  AuAssets(
      List<Asset> assets,
      AuVehicles vehicles,
      TaxYear taxYear,
      boolean byKilometre,
      RateLookup rates,
      MinorUnit unit) {
    this.assets = AssetList.until(taxYear.last(), assets);
    this.vehicles = vehicles;
    this.taxYear = taxYear;
    this.byKilometre = byKilometre;
    this.rates = rates;
    this.unit = unit;
  }

  /** The register, by date bought, sheet and row. */
  List<DepreciatedAsset> register() {
    Pool pool = pool();
    return assets.stream().map(asset -> entry(asset, pool)).toList();
  }

  /**
   * What sales of the year bring into income: the business part of the proceeds of what was written
   * off at once, and what proceeds go beyond the whole pool, at its last sale.
   */
  BigDecimal income(Asset asset) {
    if (way(asset) == Way.AT_ONCE) {
      return proceeds(asset);
    }
    List<Asset> sold =
        assets.stream()
            .filter(one -> way(one) == Way.POOL)
            .filter(one -> one.sold().filter(taxYear.days()::holds).isPresent())
            .toList();
    boolean last = !sold.isEmpty() && sold.get(sold.size() - 1).equals(asset);
    return last ? pool().income : unit.zero();
  }

  /** How many assets were bought on a day whose limit nobody looked up. */
  long unknown() {
    return assets.stream().filter(asset -> way(asset) == Way.UNKNOWN).count();
  }

  /** How an asset is deducted. */
  private enum Way {
    AT_ONCE,
    POOL,
    BY_KILOMETRE,
    UNKNOWN
  }

  private Way way(Asset asset) {
    if (byKilometre && vehicles.kind(asset).equals(AuVehicles.CAR)) {
      return Way.BY_KILOMETRE;
    }
    LocalDate day = asset.bought();
    if (rates.ask("au/depreciation", "full expensing", day).isPresent()) {
      return Way.AT_ONCE;
    }
    Optional<Rate> limit =
        rates
            .ask("au/depreciation", "limit", day)
            .or(() -> rates.ask("au/depreciation", "limit until 2020", day));
    BigDecimal cost = asset.cost().orElse(BigDecimal.ZERO);
    return limit
        .map(rate -> cost.compareTo(rate.amount()) < 0 ? Way.AT_ONCE : Way.POOL)
        .orElse(Way.UNKNOWN);
  }

  private DepreciatedAsset entry(Asset asset, Pool pool) {
    String kind = vehicles.kind(asset);
    boolean vehicle =
        kind.equals(AuVehicles.CAR) || (kind.equals(AuVehicles.OTHER) && !byKilometre);
    BigDecimal basis = AssetList.basis(asset, unit);
    BigDecimal zero = unit.zero();
    return switch (way(asset)) {
      case AT_ONCE -> {
        boolean now = taxYear.days().holds(asset.bought());
        yield new DepreciatedAsset(
            asset,
            AT_ONCE,
            IN_FULL,
            vehicle,
            basis,
            now ? zero : basis,
            now ? basis : zero,
            Optional.empty());
      }
      case POOL -> {
        int at = pool.assets.indexOf(asset);
        yield new DepreciatedAsset(
            asset,
            POOL,
            "",
            vehicle,
            basis,
            pool.before.get(at),
            pool.thisYear.get(at),
            Optional.empty());
      }
      case BY_KILOMETRE -> DepreciatedAsset.without(asset, basis, kind, true);
      case UNKNOWN -> DepreciatedAsset.without(asset, basis, "", vehicle);
    };
  }

  private BigDecimal proceeds(Asset asset) {
    BigDecimal percent = asset.businessUsePercent().orElse(HUNDRED);
    return unit.round(asset.proceeds().orElse(BigDecimal.ZERO).multiply(percent).movePointLeft(2));
  }

  /** The pool from its first year to this one; mutable while it is carried forward. */
  private final class Pool {
    private final List<Asset> assets;
    private final List<BigDecimal> before = new ArrayList<>();
    private final List<BigDecimal> thisYear = new ArrayList<>();
    private BigDecimal balance = unit.zero();
    private BigDecimal income = unit.zero();

    Pool(List<Asset> assets) {
      this.assets = assets;
      assets.forEach(
          asset -> {
            before.add(unit.zero());
            thisYear.add(unit.zero());
          });
    }

    void carry(Period year) {
      LocalDate last = year.last();
      BigDecimal added = sum(year, true);
      BigDecimal disposed = sum(year, false);
      SmallBusinessPool made =
          SmallBusinessPool.of(
              balance,
              added,
              disposed,
              factor("pool", last),
              factor("pool first year", last),
              low(last),
              unit);
      spread(year, made.deduction());
      balance = made.closing();
      income = made.income();
    }

    private BigDecimal sum(Period year, boolean bought) {
      return assets.stream()
          .filter(
              asset ->
                  bought
                      ? year.holds(asset.bought())
                      : asset.sold().filter(year::holds).isPresent())
          .map(asset -> bought ? AssetList.basis(asset, unit) : proceeds(asset))
          .reduce(unit.zero(), BigDecimal::add);
    }

    /** Over the assets still held, by what is left of each; over all where none is held. */
    private void spread(Period year, BigDecimal deduction) {
      List<BigDecimal> weights = new ArrayList<>();
      for (int i = 0; i < assets.size(); i++) {
        before.set(i, before.get(i).add(thisYear.get(i)));
        Asset asset = assets.get(i);
        boolean bought = !asset.bought().isAfter(year.last());
        boolean held = bought && asset.sold().filter(day -> !day.isAfter(year.last())).isEmpty();
        weights.add(
            held
                ? AssetList.basis(asset, unit).subtract(before.get(i)).max(BigDecimal.ZERO)
                : BigDecimal.ZERO);
      }
      boolean none = weights.stream().allMatch(weight -> weight.signum() == 0);
      List<BigDecimal> parts =
          LargestRemainder.split(
              deduction,
              none ? assets.stream().map(asset -> BigDecimal.ONE).toList() : weights,
              unit);
      for (int i = 0; i < assets.size(); i++) {
        thisYear.set(i, parts.get(i));
      }
    }
  }

  private Pool pool() {
    Pool pool = new Pool(assets.stream().filter(asset -> way(asset) == Way.POOL).toList());
    if (!pool.assets.isEmpty()) {
      LocalDate first = pool.assets.get(0).bought();
      int years = 0;
      while (first.isBefore(taxYear.first().minusYears(years))) {
        years++;
      }
      for (int back = years; back >= 0; back--) {
        LocalDate start = taxYear.first().minusYears(back);
        pool.carry(new Period(start, start.plusYears(1).minusDays(1)));
      }
    }
    return pool;
  }

  private BigDecimal factor(String code, LocalDate day) {
    return rates.find("au/depreciation", code, day).map(Rate::factor).orElse(BigDecimal.ZERO);
  }

  /** Below this the whole pool goes: without limit while full expensing was in force. */
  private BigDecimal low(LocalDate day) {
    if (rates.ask("au/depreciation", "full expensing", day).isPresent()) {
      return assets.stream()
          .map(asset -> AssetList.basis(asset, unit))
          .reduce(BigDecimal.ONE, BigDecimal::add);
    }
    return rates
        .ask("au/depreciation", "limit", day)
        .or(() -> rates.ask("au/depreciation", "limit until 2020", day))
        .map(Rate::amount)
        .orElse(BigDecimal.ZERO);
  }
}

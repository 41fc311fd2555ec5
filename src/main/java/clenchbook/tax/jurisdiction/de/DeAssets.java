package clenchbook.tax.jurisdiction.de;

import clenchbook.book.Asset;
import clenchbook.book.Names;
import clenchbook.tax.assets.AssetList;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.TaxYear;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How an asset becomes a cost: low-value ones at once, those of a pool over five years, the rest
 * straight line by the month over a useful life. Declining balance and other elections are named
 * elsewhere and never taken here.
 */
final class DeAssets {
  static final String LOW_VALUE = "low-value assets";
  static final String POOL = "pool";
  static final String STRAIGHT_LINE = "straight line";
  static final String AT_ONCE = "at once";

  private static final Pattern YEARS =
      Pattern.compile("(\\d{1,2})\\s*-?\\s*(?:years?|jahre?n?|a|j)?");
  private static final int MONTHS = 12;

  private final List<Asset> assets;
  private final DeVehicles vehicles;
  private final TaxYear taxYear;
  private final boolean recovered;
  private final RateLookup rates;
  private final MinorUnit unit;

  /**
   * The assets of a book as of a year.
   *
   * @param recovered whether tax on purchases comes back, so that Cost is without it
   */
  DeAssets(
      List<Asset> assets,
      DeVehicles vehicles,
      TaxYear taxYear,
      boolean recovered,
      RateLookup rates,
      MinorUnit unit) {
    this.assets = AssetList.until(taxYear.last(), assets);
    this.vehicles = vehicles;
    this.taxYear = taxYear;
    this.recovered = recovered;
    this.rates = rates;
    this.unit = unit;
  }

  /** The register, by date bought, sheet and row. */
  List<DepreciatedAsset> register() {
    return assets.stream().map(this::entry).toList();
  }

  private DepreciatedAsset entry(Asset asset) {
    String kind = vehicles.kind(asset);
    BigDecimal basis = AssetList.basis(asset, unit);
    if (vehicles.isVehicle(asset) && !vehicles.isBusiness(asset)) {
      return DepreciatedAsset.without(asset, basis, DeVehicles.PRIVATE, true);
    }
    if (kind.equals(POOL) && isUpTo(asset, "pool")) {
      return pooled(asset, basis);
    }
    Optional<Integer> typed = typedMonths(asset);
    if (typed.isEmpty() && isUpTo(asset, "low value")) {
      return atOnce(asset, basis, LOW_VALUE, LOW_VALUE);
    }
    Optional<Integer> life = typed.or(() -> tableMonths(asset, kind));
    if (life.isEmpty()) {
      return DepreciatedAsset.without(asset, basis, "", vehicles.isVehicle(asset));
    }
    boolean wholeFirstYear = kind.equals("computer") && typed.isEmpty() && life.get() <= MONTHS;
    return wholeFirstYear
        ? atOnce(asset, basis, kind, DepreciatedAsset.DEPRECIATION)
        : straight(asset, basis, kind, life.get());
  }

  /** Whether its cost without tax lies within a limit of the day it was bought. */
  private boolean isUpTo(Asset asset, String limit) {
    Optional<Rate> rate = rates.ask("de/depreciation", limit, asset.bought());
    return rate.filter(found -> netCost(asset).compareTo(found.amount()) <= 0).isPresent();
  }

  /** The cost without tax, also where that tax does not come back. */
  private BigDecimal netCost(Asset asset) {
    BigDecimal cost = asset.cost().orElse(BigDecimal.ZERO);
    if (recovered) {
      return cost;
    }
    return rates
        .ask("de/vat", "standard", asset.bought())
        .map(
            rate ->
                unit.round(cost.divide(BigDecimal.ONE.add(rate.factor()), MathContext.DECIMAL128)))
        .orElse(cost);
  }

  /** A number of years in the Class cell, as {@code 8} or {@code 8 Jahre}. */
  private static Optional<Integer> typedMonths(Asset asset) {
    Matcher years = YEARS.matcher(Names.key(asset.assetClass()));
    return years.matches()
        ? Optional.of(Integer.parseInt(years.group(1)) * MONTHS).filter(months -> months > 0)
        : Optional.empty();
  }

  private Optional<Integer> tableMonths(Asset asset, String kind) {
    return rates
        .ask("de/useful-life", kind, asset.bought())
        .map(rate -> rate.amount().intValueExact());
  }

  private DepreciatedAsset atOnce(Asset asset, BigDecimal basis, String kind, String line) {
    boolean now = taxYear.days().holds(asset.bought());
    return made(asset, kind, AT_ONCE, now ? unit.zero() : basis, now ? basis : unit.zero(), line);
  }

  private DepreciatedAsset straight(Asset asset, BigDecimal basis, String kind, int months) {
    StraightLine line = new StraightLine(basis, months, asset.bought(), asset.sold());
    BigDecimal before = line.upTo(taxYear.first().minusDays(1), unit);
    BigDecimal now = line.upTo(taxYear.last(), unit).subtract(before);
    return made(
        asset,
        kind.equals("equipment") ? months / MONTHS + " years" : kind,
        STRAIGHT_LINE,
        before,
        now,
        DepreciatedAsset.DEPRECIATION);
  }

  /** A pool goes on whether or not its things are sold (§ 6 Abs. 2a EStG). */
  private DepreciatedAsset pooled(Asset asset, BigDecimal basis) {
    int years =
        rates
            .ask("de/depreciation", "pool years", asset.bought())
            .map(rate -> rate.amount().intValueExact())
            .orElse(1);
    int passed = taxYear.year() - asset.bought().getYear();
    BigDecimal before = part(basis, Math.min(passed, years), years);
    BigDecimal now = part(basis, Math.min(passed + 1, years), years).subtract(before);
    return made(asset, POOL, "", before, now, POOL);
  }

  private BigDecimal part(BigDecimal basis, int passed, int years) {
    return unit.round(
        basis
            .multiply(BigDecimal.valueOf(passed))
            .divide(BigDecimal.valueOf(years), MathContext.DECIMAL128));
  }

  private DepreciatedAsset made(
      Asset asset, String kind, String convention, BigDecimal before, BigDecimal now, String line) {
    return new DepreciatedAsset(
        asset,
        kind,
        convention,
        vehicles.isVehicle(asset),
        AssetList.basis(asset, unit),
        before,
        now,
        Optional.empty(),
        line);
  }

  /** What a sale brought, at the business share, that is income of its own. */
  BigDecimal proceeds(DepreciatedAsset asset) {
    BigDecimal use = asset.asset().businessUsePercent().orElse(BigDecimal.valueOf(100));
    BigDecimal proceeds = asset.asset().proceeds().orElse(BigDecimal.ZERO);
    return unit.round(proceeds.multiply(use).movePointLeft(2));
  }

  /** Whether it counts as an asset of the business. */
  static boolean isOfBusiness(DepreciatedAsset asset) {
    return !asset.kind().equals(DeVehicles.PRIVATE);
  }

  /** What is left in the books of an asset sold on a day of the year; nothing for one in a pool. */
  static BigDecimal bookValue(DepreciatedAsset asset, LocalDate sold) {
    boolean counts = asset.convention().equals(STRAIGHT_LINE) || asset.convention().isEmpty();
    boolean pool = asset.line().equals(POOL);
    return counts && !pool ? asset.remaining().orElse(BigDecimal.ZERO) : BigDecimal.ZERO;
  }
}

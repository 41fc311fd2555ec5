package clenchbook.tax.assets;

import clenchbook.book.Asset;
import clenchbook.tax.year.YearEndInput;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/** The assets of a book in the register's order, for regimes without tables of depreciation. */
public final class AssetList {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private AssetList() {}

  /** Those bought up to {@code lastDay}, by date bought, sheet and row. */
  public static List<Asset> until(LocalDate lastDay, List<Asset> assets) {
    return assets.stream()
        .filter(asset -> !asset.bought().isAfter(lastDay))
        .sorted(Comparator.comparing(Asset::bought).thenComparing(Asset::source))
        .toList();
  }

  /**
   * The register of a regime that knows no classes: each asset at the business part of its cost.
   */
  public static List<DepreciatedAsset> undepreciated(YearEndInput input) {
    MinorUnit unit = input.book().settings().minorUnit();
    return until(input.taxYear().last(), input.book().assets()).stream()
        .map(asset -> DepreciatedAsset.without(asset, basis(asset, unit), "", false))
        .toList();
  }

  /** The business part of an asset's cost, rounded half up; all of it where no share is given. */
  public static BigDecimal basis(Asset asset, MinorUnit unit) {
    BigDecimal use = asset.businessUsePercent().orElse(HUNDRED);
    return unit.round(asset.cost().orElse(BigDecimal.ZERO).multiply(use).movePointLeft(2));
  }
}

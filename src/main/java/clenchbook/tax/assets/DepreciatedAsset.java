package clenchbook.tax.assets;

import clenchbook.book.Asset;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * One asset in the register.
 *
 * @param asset its row
 * @param kind the class it is depreciated in; empty where its word is unknown or the regime has no
 *     such tables
 * @param convention {@code half-year}, {@code quarter 1} to {@code 4}, {@code straight line}; empty
 *     without a class
 * @param vehicle whether the standard mileage rate already stands for it
 * @param basis the business part of its cost
 * @param before depreciation of the years before
 * @param thisYear depreciation of this year
 */
public record DepreciatedAsset(
    Asset asset,
    String kind,
    String convention,
    boolean vehicle,
    BigDecimal basis,
    BigDecimal before,
    BigDecimal thisYear) {

  public static DepreciatedAsset without(
      Asset asset, BigDecimal basis, String kind, boolean vehicle) {
    BigDecimal nothing = BigDecimal.ZERO.setScale(basis.scale());
    return new DepreciatedAsset(asset, kind, "", vehicle, basis, nothing, nothing);
  }

  /**
   * What a sale within the period brought above what was left: the business part of the proceeds
   * less the rest of the basis. Empty without a sale, and where no class says what was left.
   */
  public Optional<BigDecimal> gain(Period period) {
    if (convention.isEmpty() || asset.sold().filter(period::holds).isEmpty()) {
      return Optional.empty();
    }
    BigDecimal percent = asset.businessUsePercent().orElse(BigDecimal.valueOf(100));
    BigDecimal proceeds =
        asset.proceeds().orElse(BigDecimal.ZERO).multiply(percent).movePointLeft(2);
    return Optional.of(
        proceeds.setScale(basis.scale(), RoundingMode.HALF_UP).subtract(remaining()));
  }

  /** What is left of the basis after this year. */
  public BigDecimal remaining() {
    return basis.subtract(before).subtract(thisYear);
  }
}

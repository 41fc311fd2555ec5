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
 * @param convention {@code half-year}, {@code quarter 1} to {@code 4}, {@code straight line},
 *     {@code standard mileage}; empty without a class
 * @param vehicle whether the money for a mile may stand for it
 * @param basis the business part of its cost
 * @param before depreciation of the years before; nothing for a vehicle by mileage
 * @param thisYear depreciation of this year; nothing for a vehicle by mileage
 * @param mileage what the money for a mile took off its basis; empty for all that is no vehicle by
 *     mileage
 * @param line the code of the line on which this year's depreciation counts
 */
public record DepreciatedAsset(
    Asset asset,
    String kind,
    String convention,
    boolean vehicle,
    BigDecimal basis,
    BigDecimal before,
    BigDecimal thisYear,
    Optional<TakenByMileage> mileage,
    String line) {
  /** The code of the line of depreciation in most regimes. */
  public static final String DEPRECIATION = "depreciation";

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  /** An asset whose depreciation counts on the line of depreciation. */
  public DepreciatedAsset(
      Asset asset,
      String kind,
      String convention,
      boolean vehicle,
      BigDecimal basis,
      BigDecimal before,
      BigDecimal thisYear,
      Optional<TakenByMileage> mileage) {
    this(asset, kind, convention, vehicle, basis, before, thisYear, mileage, DEPRECIATION);
  }

  /** An asset that no table depreciates. */
  public static DepreciatedAsset without(
      Asset asset, BigDecimal basis, String kind, boolean vehicle) {
    BigDecimal nothing = BigDecimal.ZERO.setScale(basis.scale());
    return new DepreciatedAsset(
        asset, kind, "", vehicle, basis, nothing, nothing, Optional.empty());
  }

  /** A vehicle whose miles stand for its depreciation. */
  public static DepreciatedAsset byMileage(
      Asset asset, BigDecimal basis, String kind, TakenByMileage taken) {
    BigDecimal nothing = BigDecimal.ZERO.setScale(basis.scale());
    return new DepreciatedAsset(
        asset, kind, "standard mileage", true, basis, nothing, nothing, Optional.of(taken));
  }

  /**
   * What a sale within the period brought above what was left: the business part of the proceeds
   * less the rest of the basis; a loss is negative. Empty without a sale, and where nothing says
   * what was left.
   */
  public Optional<BigDecimal> gain(Period period) {
    if (convention.isEmpty() || asset.sold().filter(period::holds).isEmpty()) {
      return Optional.empty();
    }
    BigDecimal percent = asset.businessUsePercent().orElse(HUNDRED);
    BigDecimal proceeds =
        asset
            .proceeds()
            .orElse(BigDecimal.ZERO)
            .multiply(percent)
            .movePointLeft(2)
            .setScale(basis.scale(), RoundingMode.HALF_UP);
    return remaining().map(proceeds::subtract);
  }

  /**
   * What is left of the basis after this year, never below nothing by mileage; empty for a vehicle
   * whose miles since it was bought are not known.
   */
  public Optional<BigDecimal> remaining() {
    if (mileage.isPresent()) {
      return mileage
          .filter(TakenByMileage::known)
          .map(
              taken -> basis.subtract(taken.amount()).max(BigDecimal.ZERO.setScale(basis.scale())));
    }
    return Optional.of(basis.subtract(before).subtract(thisYear));
  }
}

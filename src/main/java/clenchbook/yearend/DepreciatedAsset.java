package clenchbook.yearend;

import clenchbook.book.Asset;
import java.math.BigDecimal;

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
record DepreciatedAsset(
    Asset asset,
    String kind,
    String convention,
    boolean vehicle,
    BigDecimal basis,
    BigDecimal before,
    BigDecimal thisYear) {

  static DepreciatedAsset without(Asset asset, BigDecimal basis, String kind, boolean vehicle) {
    BigDecimal nothing = BigDecimal.ZERO.setScale(basis.scale());
    return new DepreciatedAsset(asset, kind, "", vehicle, basis, nothing, nothing);
  }

  /** What is left of the basis after this year. */
  BigDecimal remaining() {
    return basis.subtract(before).subtract(thisYear);
  }
}

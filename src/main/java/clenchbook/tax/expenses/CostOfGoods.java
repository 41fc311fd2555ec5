package clenchbook.tax.expenses;

import java.math.BigDecimal;

/**
 * What the goods of the year cost: stock at its beginning, what was added, less stock at its end
 * (Schedule C, Part III; the same sum serves any country's goods used).
 *
 * @param opening stock at the beginning
 * @param purchases bought in the year, less personal use
 * @param labor cost of labor that went into stock
 * @param materials materials and supplies
 * @param other other costs
 * @param closing stock at the end
 */
record CostOfGoods(
    BigDecimal opening,
    BigDecimal purchases,
    BigDecimal labor,
    BigDecimal materials,
    BigDecimal other,
    BigDecimal closing) {

  /** All that could have been used up. */
  BigDecimal available() {
    return opening.add(purchases).add(labor).add(materials).add(other);
  }

  /** What was used up. */
  BigDecimal sold() {
    return available().subtract(closing);
  }
}

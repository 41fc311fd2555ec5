package clenchbook.comparison.questions;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The money of one job, in the book's currency, each part already rounded to its minor unit.
 *
 * @param charged the charge after discount, without tax
 * @param list what the list asks for the same without tax and before discount, extras included;
 *     empty where the list has no price
 * @param workList what the list asks for the Work alone, without tax; empty where it has no price
 * @param materials shoes, nails and extras
 * @param gas gas, with the job's share of setting up the forge
 * @param sundries rasps, knives and the like
 * @param travel its share of the vehicle
 * @param overhead its share of the year's overheads
 * @param labour the farrier's and a helper's time, at their wages
 */
public record JobMoney(
    BigDecimal charged,
    Optional<BigDecimal> list,
    Optional<BigDecimal> workList,
    BigDecimal materials,
    BigDecimal gas,
    BigDecimal sundries,
    BigDecimal travel,
    BigDecimal overhead,
    BigDecimal labour) {

  /** Everything but the time. */
  public BigDecimal costBeforeLabour() {
    return materials.add(gas).add(sundries).add(travel).add(overhead);
  }

  /** Everything. */
  public BigDecimal cost() {
    return costBeforeLabour().add(labour);
  }

  /** What is left for the farrier's time. */
  public BigDecimal marginBeforeLabour() {
    return charged.subtract(costBeforeLabour());
  }

  /** What is left when the time is paid, too. */
  public BigDecimal marginAfterLabour() {
    return charged.subtract(cost());
  }
}

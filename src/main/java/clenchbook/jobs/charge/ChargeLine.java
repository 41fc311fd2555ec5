package clenchbook.jobs.charge;

import clenchbook.jobs.Job;
import clenchbook.jobs.Payer;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * One line that one payer is charged for a job.
 *
 * @param job the job
 * @param payer who pays, with the share
 * @param kind the Work or an extra
 * @param part all of it, its goods or the rest
 * @param item the extra's name; empty for the Work
 * @param count pieces of the extra; 1 for the Work
 * @param listAmount the payer's share before discount, all parts together, in the currency
 * @param discountPercent the discount taken off, 0 for none
 * @param amount what is charged for this line, rounded; with tax where prices include it
 * @param tax the tax on it
 */
public record ChargeLine(
    Job job,
    Payer payer,
    Kind kind,
    Part part,
    String item,
    int count,
    BigDecimal listAmount,
    BigDecimal discountPercent,
    BigDecimal amount,
    LineTax tax) {

  /** What a line is for. */
  public enum Kind {
    /** The Work. */
    WORK,
    /** An extra with a price. */
    EXTRA
  }

  /** Which part of the charge a line holds where only goods are taxed. */
  public enum Part {
    /** All of it. */
    WHOLE,
    /** The goods. */
    GOODS,
    /** What is not goods, without tax code. */
    REST
  }

  /**
   * The line without tax, not yet rounded.
   *
   * @return the amount, or the amount divided by one plus the rate where prices include tax; to 34
   *     figures
   */
  public BigDecimal exactNet() {
    return tax.included()
        ? amount.divide(BigDecimal.ONE.add(tax.rate()), MathContext.DECIMAL128)
        : amount;
  }
}

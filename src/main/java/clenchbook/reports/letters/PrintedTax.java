package clenchbook.reports.letters;

import clenchbook.book.TaxCategory;
import java.math.BigDecimal;

/**
 * The tax of one code.
 *
 * @param code the code that the lines bear; empty for lines without one
 * @param name the tax's name from the book
 * @param ratePercent the rate in percent; 0 for zero-rated, exempt and outside scope
 * @param net what it is charged on
 * @param tax what it comes to
 * @param category how it is treated
 * @param reason why no tax is charged, in words or as a code, as the book gives it; empty where tax
 *     is charged or nothing is said
 */
public record PrintedTax(
    String code,
    String name,
    BigDecimal ratePercent,
    BigDecimal net,
    BigDecimal tax,
    TaxCategory category,
    String reason) {
  /** The tax as a credit note prints it: what it takes back are positive amounts. */
  PrintedTax credited() {
    return new PrintedTax(code, name, ratePercent, net.negate(), tax.negate(), category, reason);
  }

  /**
   * A tax that is charged, or one of zero.
   *
   * @param code the code
   * @param name the tax's name
   * @param ratePercent the rate in percent
   * @param net what it is charged on
   * @param tax what it comes to
   */
  public PrintedTax(
      String code, String name, BigDecimal ratePercent, BigDecimal net, BigDecimal tax) {
    this(
        code,
        name,
        ratePercent,
        net,
        tax,
        ratePercent.signum() == 0 ? TaxCategory.Z : TaxCategory.S,
        "");
  }
}

package clenchbook.tax.income;

import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * Work of one tax code on one bill, as far as the line it counts on depends on it.
 *
 * @param day the bill's date
 * @param taxCode its tax code; empty for work without one
 * @param ratePercent the code's rate; zero without a code
 * @param taxed whether the bill charges tax on it
 */
public record Sold(LocalDate day, String taxCode, BigDecimal ratePercent, boolean taxed) {
  /** A line of a bill, whatever its amount. */
  public static Sold of(Billed bill, BilledLine line) {
    BigDecimal rate = line.ratePercent().stripTrailingZeros();
    return new Sold(bill.date(), line.taxCode(), rate, line.tax().signum() != 0);
  }
}

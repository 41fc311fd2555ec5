package clenchbook.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One row of Purchases: stock when an item is named, else an expense.
 *
 * @param source the row it was read from
 * @param date the day bought
 * @param supplier from whom
 * @param item the stock item; empty = an expense
 * @param size its size
 * @param quantity how many of Unit
 * @param unit what Quantity counts
 * @param category the expense's category
 * @param net without tax
 * @param tax tax paid
 * @param gross with tax
 * @param paidOn the day paid
 * @param receipt receipt's reference
 */
public record Purchase(
    SourceRow source,
    LocalDate date,
    String supplier,
    String item,
    String size,
    Optional<BigDecimal> quantity,
    Unit unit,
    String category,
    Optional<BigDecimal> net,
    Optional<BigDecimal> tax,
    Optional<BigDecimal> gross,
    Optional<LocalDate> paidOn,
    String receipt) {
  /**
   * What it cost without tax.
   *
   * @return Net, else Gross less Tax, else Gross; zero when nothing is given
   */
  public BigDecimal netAmount() {
    return net.or(() -> gross.map(amount -> amount.subtract(tax.orElse(BigDecimal.ZERO))))
        .orElse(BigDecimal.ZERO);
  }

  /**
   * What it cost with tax.
   *
   * @return Gross, else Net plus Tax, else Net; zero when nothing is given
   */
  public BigDecimal grossAmount() {
    return gross
        .or(() -> net.map(amount -> amount.add(tax.orElse(BigDecimal.ZERO))))
        .orElse(BigDecimal.ZERO);
  }
}

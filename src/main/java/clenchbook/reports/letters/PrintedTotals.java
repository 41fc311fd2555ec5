package clenchbook.reports.letters;

import java.math.BigDecimal;
import java.util.List;

/**
 * The sums beneath the lines.
 *
 * @param linesIncludeTax true where the lines' amounts hold the tax
 * @param linesExempt true where the owner is exempt and the lines' amounts are without the tax that
 *     others would pay
 * @param net the sum without tax
 * @param taxes one row per tax code; empty where no tax is charged or shown
 * @param tax the sum of the taxes
 * @param total what was charged: net and tax
 */
public record PrintedTotals(
    boolean linesIncludeTax,
    boolean linesExempt,
    BigDecimal net,
    List<PrintedTax> taxes,
    BigDecimal tax,
    BigDecimal total) {
  /** Copies its list. */
  public PrintedTotals {
    taxes = List.copyOf(taxes);
  }

  /** The totals as a credit note prints them: what it takes back are positive amounts. */
  public PrintedTotals credited() {
    return new PrintedTotals(
        linesIncludeTax,
        linesExempt,
        net.negate(),
        taxes.stream().map(PrintedTax::credited).toList(),
        tax.negate(),
        total.negate());
  }

  /**
   * Totals of an owner who is not exempt.
   *
   * @param linesIncludeTax true where the lines' amounts hold the tax
   * @param net the sum without tax
   * @param taxes one row per tax code
   * @param tax the sum of the taxes
   * @param total what was charged
   */
  public PrintedTotals(
      boolean linesIncludeTax,
      BigDecimal net,
      List<PrintedTax> taxes,
      BigDecimal tax,
      BigDecimal total) {
    this(linesIncludeTax, false, net, taxes, tax, total);
  }
}

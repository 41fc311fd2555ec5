package clenchbook.reports.letters;

import java.math.BigDecimal;
import java.util.List;

/**
 * The sums beneath the lines.
 *
 * @param linesIncludeTax true where the lines' amounts hold the tax
 * @param net the sum without tax
 * @param taxes one row per tax code; empty where no tax is charged or shown
 * @param tax the sum of the taxes
 * @param total what was charged: net and tax
 */
public record PrintedTotals(
    boolean linesIncludeTax,
    BigDecimal net,
    List<PrintedTax> taxes,
    BigDecimal tax,
    BigDecimal total) {
  /** Copies its list. */
  public PrintedTotals {
    taxes = List.copyOf(taxes);
  }
}

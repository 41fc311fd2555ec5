package clenchbook.tax.sales;

import clenchbook.tax.lines.LineItem;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * The boxes of one VAT period. Box 1 takes the tax of what was billed in the period by the bill's
 * date; box 4 the tax of purchases by their date. Boxes 2, 8 and 9 are nothing: no trade with the
 * European Union is known to the book.
 *
 * @param period the days
 * @param sales net sales
 * @param salesTax tax charged on them
 * @param purchases net purchases
 * @param purchaseTax tax to reclaim on them
 */
public record VatPeriod(
    Period period,
    BigDecimal sales,
    BigDecimal salesTax,
    BigDecimal purchases,
    BigDecimal purchaseTax) {

  public static VatPeriod of(
      Period period, List<LineItem> sales, List<LineItem> purchases, MinorUnit unit) {
    List<LineItem> out = LineItem.within(period, sales);
    List<LineItem> in = LineItem.within(period, purchases);
    return new VatPeriod(period, net(out, unit), tax(out, unit), net(in, unit), tax(in, unit));
  }

  private static BigDecimal net(List<LineItem> items, MinorUnit unit) {
    return unit.zero().add(LineItem.sum(items));
  }

  private static BigDecimal tax(List<LineItem> items, MinorUnit unit) {
    return items.stream().map(LineItem::tax).reduce(unit.zero(), BigDecimal::add);
  }

  /** Whether anything was sold or bought. */
  public boolean isUsed() {
    return sales.signum() != 0 || purchases.signum() != 0;
  }

  /** Box 5 on the standard method: what to pay, or below zero to reclaim. */
  public BigDecimal payable() {
    return salesTax.subtract(purchaseTax);
  }

  /** Turnover with tax, on which a flat rate is figured. */
  public BigDecimal flatRateTurnover() {
    return sales.add(salesTax);
  }

  /** Box 1 at a flat rate: turnover with tax times the rate, rounded half up. */
  public BigDecimal flatRateTax(BigDecimal factor, MinorUnit unit) {
    return unit.round(flatRateTurnover().multiply(factor));
  }

  /** Box 6 or 7 in whole pounds, pence left off, as the form takes them. */
  public static BigDecimal wholePounds(BigDecimal amount) {
    return amount.setScale(0, RoundingMode.DOWN);
  }
}

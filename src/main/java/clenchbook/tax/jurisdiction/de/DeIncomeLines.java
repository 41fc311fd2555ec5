package clenchbook.tax.jurisdiction.de;

import clenchbook.tax.income.IncomeLines;
import clenchbook.tax.income.Sold;
import java.time.LocalDate;

/**
 * The lines of the income-surplus statement for work: that of a small business, that with tax, that
 * without. Money given back lowers the line it came from.
 */
final class DeIncomeLines implements IncomeLines {
  static final String SMALL = "small business income";
  static final String TAXED = "taxed income";
  static final String UNTAXED = "untaxed income";

  private final SmallBusiness small;

  DeIncomeLines(SmallBusiness small) {
    this.small = small;
  }

  @Override
  public String sold(Sold sold) {
    if (sold.taxed()) {
      return TAXED;
    }
    return small.on(sold.day()) ? SMALL : UNTAXED;
  }

  @Override
  public String givenBack(Sold sold) {
    return sold(sold);
  }

  @Override
  public String tip(LocalDate day) {
    return withoutBill(day, false);
  }

  @Override
  public String withoutBill(LocalDate day, boolean givenBack) {
    return small.on(day) ? SMALL : TAXED;
  }
}

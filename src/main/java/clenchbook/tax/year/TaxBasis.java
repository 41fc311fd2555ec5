package clenchbook.tax.year;

import clenchbook.book.Book;
import clenchbook.book.SheetKind;
import clenchbook.tax.page.Bases;
import clenchbook.tax.page.Wording;

/**
 * On which basis income and cost count.
 *
 * @param cashIncome income counts when received
 * @param cashCost costs count when paid
 * @param word what the basis column says of income
 */
public record TaxBasis(boolean cashIncome, boolean cashCost, Wording word) {

  /**
   * The setting's basis; cash without a Payments sheet shows what was invoiced instead, and says
   * so.
   */
  public static TaxBasis of(Book book) {
    return book.settings().countsCash() ? ofCash(book) : new TaxBasis(false, false, Bases.INVOICED);
  }

  /** The cash basis whatever the setting, for a law that knows no other. */
  public static TaxBasis ofCash(Book book) {
    boolean payments = book.present().contains(SheetKind.PAYMENTS);
    return payments
        ? new TaxBasis(true, true, Bases.CASH)
        : new TaxBasis(false, true, Bases.INVOICED_WITHOUT_PAYMENTS);
  }

  /** What the basis column says of costs. */
  public Wording costWord() {
    return cashCost ? Bases.CASH : Bases.INVOICED;
  }
}

package clenchbook.tax.year;

import clenchbook.book.Book;
import clenchbook.book.SheetKind;

/**
 * On which basis income and cost count.
 *
 * @param cashIncome income counts when received
 * @param cashCost costs count when paid
 * @param word what the basis column says of income
 */
public record TaxBasis(boolean cashIncome, boolean cashCost, String word) {

  /**
   * The setting's basis; cash without a Payments sheet shows what was invoiced instead, and says
   * so.
   */
  public static TaxBasis of(Book book) {
    return book.settings().countsCash() ? ofCash(book) : new TaxBasis(false, false, "invoiced");
  }

  /** The cash basis whatever the setting, for a law that knows no other. */
  public static TaxBasis ofCash(Book book) {
    boolean payments = book.present().contains(SheetKind.PAYMENTS);
    return payments
        ? new TaxBasis(true, true, "cash")
        : new TaxBasis(false, true, "invoiced, because there is no Payments sheet");
  }

  /** What the basis column says of costs. */
  public String costWord() {
    return cashCost ? "cash" : "invoiced";
  }
}

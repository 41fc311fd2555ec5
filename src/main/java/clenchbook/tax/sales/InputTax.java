package clenchbook.tax.sales;

import clenchbook.book.Book;
import clenchbook.book.Purchase;
import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.lines.LineItem;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/**
 * Tax on purchases that may come back: of every purchase but those that are private, never allowed,
 * or themselves a payment of tax, whatever language their category is written in.
 */
public final class InputTax {
  private static final Set<String> NONE = Set.of("private", "not allowed", "tax paid over");

  private InputTax() {}

  /**
   * One item for each purchase with tax.
   *
   * @param book the book
   * @param categories where the farrier's words lead
   * @param byPayment whether the day paid counts rather than the day bought
   * @return items whose {@code net} is the tax, in the minor unit, in the order of the sheet
   */
  public static List<LineItem> of(Book book, CategoryMap categories, boolean byPayment) {
    MinorUnit unit = book.settings().minorUnit();
    return book.purchases().stream()
        .filter(purchase -> !purchase.item().isEmpty() || counts(purchase, categories))
        .map(purchase -> item(purchase, unit, byPayment))
        .filter(item -> item.net().signum() != 0)
        .toList();
  }

  private static boolean counts(Purchase purchase, CategoryMap categories) {
    return !NONE.contains(categories.find(purchase.category()).code());
  }

  private static LineItem item(Purchase purchase, MinorUnit unit, boolean byPayment) {
    BigDecimal gross = unit.round(purchase.grossAmount());
    BigDecimal tax = gross.subtract(unit.round(purchase.netAmount()));
    LocalDate day = byPayment ? purchase.paidOn().orElse(purchase.date()) : purchase.date();
    String who = purchase.supplier().isEmpty() ? purchase.category() : purchase.supplier();
    return new LineItem(
        "input tax", purchase.source().sheet(), purchase.source().row(), day, who, tax, tax, gross);
  }
}

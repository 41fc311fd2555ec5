package clenchbook.tax.sales;

import clenchbook.book.Book;
import clenchbook.book.Purchase;
import clenchbook.tax.lines.LineItem;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.List;

/**
 * Purchases as value-added tax sees them: by their date, private ones left out, tax where it comes
 * back.
 */
public final class VatPurchases {
  private VatPurchases() {}

  /**
   * One item for each purchase that counts for value-added tax, in the order of the sheet; amounts
   * in the book's currency.
   */
  public static List<LineItem> of(Book book) {
    MinorUnit unit = book.settings().minorUnit();
    boolean recovered = book.settings().inputTaxRecovered();
    return book.purchases().stream()
        .filter(purchase -> !purchase.category().equalsIgnoreCase("private"))
        .map(purchase -> item(purchase, unit, recovered))
        .toList();
  }

  private static LineItem item(Purchase purchase, MinorUnit unit, boolean recovered) {
    BigDecimal gross = unit.round(purchase.grossAmount());
    BigDecimal net = unit.round(purchase.netAmount());
    BigDecimal tax = recovered ? gross.subtract(net) : unit.zero();
    return new LineItem(
        "purchases",
        purchase.source().sheet(),
        purchase.source().row(),
        purchase.date(),
        purchase.supplier(),
        net,
        tax,
        gross);
  }
}

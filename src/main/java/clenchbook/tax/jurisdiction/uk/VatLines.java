package clenchbook.tax.jurisdiction.uk;

import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.sales.SalesTaxLines;
import clenchbook.tax.sales.VatPurchases;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.util.List;

/**
 * The boxes of the VAT return on the standard method, period by period, each opening to its rows.
 */
final class VatLines {
  /** Pages print the table of VAT instead; these words stand in files alone. */
  private static final Wording SALES = Wording.literal("invoices of the period, by their date");

  private static final Wording PURCHASES =
      Wording.literal("purchases of the period, by their date");

  private final YearFigures figures;
  private final SummaryBuilder lines;

  VatLines(YearFigures figures, SummaryBuilder lines) {
    this.figures = figures;
    this.lines = lines;
  }

  void add(Period period) {
    List<LineItem> sales = LineItem.within(period, figures.sales());
    List<LineItem> purchases = LineItem.within(period, VatPurchases.of(figures.input().book()));
    if (sales.isEmpty() && purchases.isEmpty()) {
      return;
    }
    SummaryLine due =
        box(
            period,
            "1",
            "VAT due on sales",
            sales.stream().map(SalesTaxLines::taxOf).toList(),
            SALES);
    List<LineItem> back =
        purchases.stream()
            .filter(item -> item.tax().signum() != 0)
            .map(SalesTaxLines::taxOf)
            .toList();
    SummaryLine reclaimed = box(period, "4", "VAT reclaimed on purchases", back, PURCHASES);
    BigDecimal payable = due.amount().subtract(reclaimed.amount());
    lines.tabled(head(period, "5", "Net VAT, box 1 less box 4"), payable, "box 1 less box 4");
    box(period, "6", "Sales without VAT, pence not yet left off", sales, SALES);
    box(period, "7", "Purchases without VAT, pence not yet left off", purchases, PURCHASES);
  }

  private SummaryLine box(
      Period period, String box, String name, List<LineItem> items, Wording basis) {
    return lines.tabled(head(period, box, name), items, basis);
  }

  private static LineHead head(Period period, String box, String name) {
    String line = "VAT " + period.last() + " box " + box;
    return new LineHead(
        line, name + ", " + period.text(), "standard method; flat rates in figures/vat.csv");
  }
}

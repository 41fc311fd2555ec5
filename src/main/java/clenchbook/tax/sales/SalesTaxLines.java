package clenchbook.tax.sales;

import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.page.Wording;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Tax on sales and purchases by rate, as lines beside the summary that open to their rows. */
public final class SalesTaxLines {
  private static final Wording SALES =
      Wording.of("invoices of the period, by their date", "tax.basis.invoicesByDate");
  private static final Wording PURCHASES =
      Wording.of("purchases of the period, by their date", "tax.basis.purchasesByDate");

  private static final Wording COMES_BACK =
      Wording.of("Tax on purchases that comes back", "tax.line.comesBack");

  private final YearFigures figures;
  private final SummaryBuilder lines;

  private SalesTaxLines(YearFigures figures, SummaryBuilder lines) {
    this.figures = figures;
    this.lines = lines;
  }

  /** Each code and rate of the Tax sheet, and what comes back on purchases. */
  public static void byRate(YearFigures figures, SummaryBuilder lines) {
    new SalesTaxLines(figures, lines).byRate();
  }

  private void byRate() {
    TreeMap<String, List<LineItem>> byRate = new TreeMap<>();
    TreeMap<String, Message> said = new TreeMap<>();
    for (Billed bill : figures.billed()) {
      if (bill.isIncome() && figures.period().holds(bill.date())) {
        bill.lines().stream()
            .filter(line -> !line.taxCode().isEmpty())
            .forEach(
                line -> {
                  said.put(name(line), said(line));
                  byRate
                      .computeIfAbsent(name(line), unused -> new ArrayList<>())
                      .add(LineItem.of("", bill, line));
                });
      }
    }
    byRate.forEach((name, items) -> rate(name, said.getOrDefault(name, Message.NONE), items));
    List<LineItem> bought =
        LineItem.within(figures.period(), VatPurchases.of(figures.input().book()));
    List<LineItem> back =
        bought.stream().filter(item -> item.tax().signum() != 0).map(SalesTaxLines::taxOf).toList();
    if (!back.isEmpty()) {
      lines.beside(
          LineHead.unnumbered("tax on purchases", COMES_BACK, "Purchases"), back, PURCHASES);
    }
  }

  private static String name(BilledLine line) {
    return line.taxCode() + " " + line.ratePercent().stripTrailingZeros().toPlainString() + " %";
  }

  private static Message said(BilledLine line) {
    return Message.of("tax.line.rate", line.taxCode(), line.ratePercent().stripTrailingZeros());
  }

  private void rate(String name, Message said, List<LineItem> items) {
    lines.beside(
        LineHead.unnumbered(
            "sales at " + name,
            Wording.of("Sales at " + name + ", without tax", "tax.line.salesAt", said),
            "Tax sheet"),
        items,
        SALES);
    List<LineItem> tax = items.stream().map(SalesTaxLines::taxOf).toList();
    lines.beside(
        LineHead.unnumbered(
            "tax at " + name,
            Wording.of("Tax charged at " + name, "tax.line.taxAt", said),
            "Tax sheet"),
        tax,
        SALES);
  }

  /** The same row with its tax as what counts. */
  public static LineItem taxOf(LineItem item) {
    return item.with(item.tax());
  }
}

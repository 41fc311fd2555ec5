package clenchbook.tax;

import clenchbook.book.Setting;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.sales.VatPurchases;
import clenchbook.tax.year.Regime;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Tax on sales and purchases as lines beside the summary, each opening to its rows: by rate, or by
 * VAT period and box.
 */
final class TaxLines {
  private static final String SALES = "invoices of the period, by their date";
  private static final String PURCHASES = "purchases of the period, by their date";

  private final YearFigures figures;
  private final SummaryBuilder lines;

  private TaxLines(YearFigures figures, SummaryBuilder lines) {
    this.figures = figures;
    this.lines = lines;
  }

  static void add(YearFigures figures, SummaryBuilder lines, List<Period> vatPeriods) {
    TaxLines tax = new TaxLines(figures, lines);
    boolean registered = !figures.input().book().settings().text(Setting.TAX_NUMBER).isEmpty();
    if (figures.regime() == Regime.UK) {
      if (registered) {
        vatPeriods.forEach(tax::vat);
      }
    } else {
      tax.byRate();
    }
  }

  /** In other regimes: each code and rate of the Tax sheet, and what comes back on purchases. */
  private void byRate() {
    TreeMap<String, List<LineItem>> byRate = new TreeMap<>();
    for (Billed bill : figures.billed()) {
      if (bill.isIncome() && figures.period().holds(bill.date())) {
        bill.lines().stream()
            .filter(line -> !line.taxCode().isEmpty())
            .forEach(
                line ->
                    byRate
                        .computeIfAbsent(name(line), unused -> new ArrayList<>())
                        .add(LineItem.of("", bill, line)));
      }
    }
    byRate.forEach(this::rate);
    List<LineItem> bought =
        LineItem.within(figures.period(), VatPurchases.of(figures.input().book()));
    List<LineItem> back =
        bought.stream().filter(item -> item.tax().signum() != 0).map(TaxLines::taxOf).toList();
    if (!back.isEmpty()) {
      lines.beside(
          new LineHead("tax on purchases", "Tax on purchases that comes back", "Purchases"),
          back,
          PURCHASES);
    }
  }

  private static String name(BilledLine line) {
    return line.taxCode() + " " + line.ratePercent().stripTrailingZeros().toPlainString() + " %";
  }

  private void rate(String name, List<LineItem> items) {
    lines.beside(
        new LineHead("sales at " + name, "Sales at " + name + ", without tax", "Tax sheet"),
        items,
        SALES);
    List<LineItem> tax = items.stream().map(TaxLines::taxOf).toList();
    lines.beside(new LineHead("tax at " + name, "Tax charged at " + name, "Tax sheet"), tax, SALES);
  }

  /** The same row with its tax as what counts. */
  private static LineItem taxOf(LineItem item) {
    return new LineItem(
        item.code(),
        item.sheet(),
        item.row(),
        item.date(),
        item.who(),
        item.tax(),
        item.tax(),
        item.gross());
  }

  private void vat(Period period) {
    List<LineItem> sales = LineItem.within(period, figures.sales());
    List<LineItem> purchases = LineItem.within(period, VatPurchases.of(figures.input().book()));
    if (sales.isEmpty() && purchases.isEmpty()) {
      return;
    }
    SummaryLine due =
        box(period, "1", "VAT due on sales", sales.stream().map(TaxLines::taxOf).toList(), SALES);
    List<LineItem> back =
        purchases.stream().filter(item -> item.tax().signum() != 0).map(TaxLines::taxOf).toList();
    SummaryLine reclaimed = box(period, "4", "VAT reclaimed on purchases", back, PURCHASES);
    BigDecimal payable = due.amount().subtract(reclaimed.amount());
    lines.figure(head(period, "5", "Net VAT, box 1 less box 4"), payable, "box 1 less box 4");
    box(period, "6", "Sales without VAT, pence not yet left off", sales, SALES);
    box(period, "7", "Purchases without VAT, pence not yet left off", purchases, PURCHASES);
  }

  private SummaryLine box(
      Period period, String box, String name, List<LineItem> items, String basis) {
    return lines.beside(head(period, box, name), items, basis);
  }

  private static LineHead head(Period period, String box, String name) {
    String line = "VAT " + period.last() + " box " + box;
    return new LineHead(
        line, name + ", " + period.text(), "standard method; flat rates in figures/vat.csv");
  }
}

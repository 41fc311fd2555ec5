package clenchbook.tax.jurisdiction.ca;

import clenchbook.book.Setting;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.sales.SalesTaxLines;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The lines of the GST/HST return of the period: sales and the tax on them by the bill's date,
 * input tax credits by that of the purchase. Without a Tax number there is none.
 */
final class GstReturn {
  private static final String TABLE = "ca/gst-return";
  private static final String PREFIX = "GST/HST ";
  private static final List<String> CODES =
      List.of(
          "sales",
          "collected",
          "adjustments",
          "total tax",
          "input tax",
          "bad debt tax",
          "total credits",
          "net tax");

  private final YearFigures figures;
  private final List<LineItem> bought;
  private final RateLookup rates;

  /**
   * Of a period.
   *
   * @param bought input tax of any day, by the day of the purchase
   */
  GstReturn(YearFigures figures, List<LineItem> bought, RateLookup rates) {
    this.figures = figures;
    this.bought = LineItem.within(figures.period(), bought);
    this.rates = rates;
  }

  /** Whether a Tax number is given: a small supplier without one charges no tax. */
  static boolean isRegistered(YearFigures figures) {
    return !figures.input().book().settings().text(Setting.TAX_NUMBER).isEmpty();
  }

  void addTo(SummaryBuilder lines) {
    if (!isRegistered(figures)) {
      return;
    }
    List<LineItem> sales = LineItem.within(figures.period(), figures.sales());
    add(lines, "sales", sales);
    BigDecimal collected =
        add(lines, "collected", sales.stream().map(SalesTaxLines::taxOf).toList());
    add(lines, "adjustments", List.of());
    total(lines, "total tax", collected, "line 103 and line 104");
    BigDecimal credits = add(lines, "input tax", bought);
    BigDecimal debts = add(lines, "bad debt tax", badDebtTax());
    total(lines, "total credits", credits.add(debts), "line 106 and line 107");
    total(
        lines,
        "net tax",
        collected.subtract(credits).subtract(debts),
        "line 105 less line 108; below zero it comes back");
  }

  /** The tax within debts given up, where income counts by the bill. */
  private List<LineItem> badDebtTax() {
    return LineItem.of("bad debts", figures.income().items()).stream()
        .filter(item -> item.tax().signum() != 0)
        .map(SalesTaxLines::taxOf)
        .toList();
  }

  private BigDecimal add(SummaryBuilder lines, String code, List<LineItem> items) {
    lines
        .scheme()
        .find(TABLE, code)
        .ifPresent(
            head -> lines.tabled(named(head), items, Wording.literal("by the day of the invoice")));
    return figures.unit().zero().add(LineItem.sum(items));
  }

  private void total(SummaryBuilder lines, String code, BigDecimal amount, String how) {
    lines.scheme().find(TABLE, code).ifPresent(head -> lines.tabled(named(head), amount, how));
  }

  private static LineHead named(LineHead head) {
    return new LineHead(PREFIX + head.line(), head.name(), head.source());
  }

  /** A line of the return's form, and what stands on it. */
  private record Printed(Rate label, SummaryLine line) {}

  /** The lines as a table. */
  TaxTable table(List<SummaryLine> summary) {
    List<Printed> printed = new ArrayList<>();
    for (String code : CODES) {
      rates
          .ask(TABLE, code, figures.input().taxYear().last())
          .ifPresent(
              label ->
                  SummaryLine.find(summary, PREFIX + label.value())
                      .ifPresent(line -> printed.add(new Printed(label, line))));
    }
    FigureTable table =
        FiguresOf.rows(printed)
            .column("line", one -> one.label().value())
            .column("name", one -> one.label().name())
            .amount("amount", one -> one.line().amount())
            .named("gst-return");
    return TaxTable.asIs(Message.of("canada.gst"), table)
        .said("name", printed.stream().map(one -> one.label().said()).toList())
        .placedOnPage();
  }
}

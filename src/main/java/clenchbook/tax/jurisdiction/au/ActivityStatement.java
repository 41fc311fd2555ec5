package clenchbook.tax.jurisdiction.au;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.IncomePart;
import clenchbook.tax.jurisdiction.BusinessDay;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.sales.InputTax;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The labels of the quarterly activity statement: total sales with GST, GST on sales, GST on
 * purchases, by receipts and payments on the cash basis, else by invoices. Tips are no sales.
 */
final class ActivityStatement {
  private static final String TABLE = "au/activity-statement";
  private static final List<String> CODES = List.of("sales", "gst on sales", "gst on purchases");

  private final YearFigures figures;
  private final RateLookup rates;

  ActivityStatement(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  /** A line for each label: {@code G1} in a quarter's own run, {@code Q1 G1} in a year's. */
  void addTo(SummaryBuilder lines) {
    for (int quarter : quarters()) {
      for (String code : CODES) {
        head(code, quarter, lines)
            .ifPresent(head -> lines.tabled(head, items(code, quarter), basis(code)));
      }
    }
  }

  private List<Integer> quarters() {
    return figures.input().quarter().map(List::of).orElse(List.of(1, 2, 3, 4));
  }

  private Optional<LineHead> head(String code, int quarter, SummaryBuilder lines) {
    return lines
        .scheme()
        .find(TABLE, code)
        .map(
            head ->
                new LineHead(
                    prefix(quarter) + head.line(),
                    head.name()
                        + ", "
                        + period(quarter).text()
                        + ", whole dollars to enter: "
                        + WholeDollars.cut(LineItem.sum(items(code, quarter))),
                    head.source()));
  }

  private String prefix(int quarter) {
    return figures.wholeYear() ? "Q" + quarter + " " : "";
  }

  private Period period(int quarter) {
    return figures.input().taxYear().quarter(quarter);
  }

  private Wording basis(String code) {
    boolean cash =
        code.equals("gst on purchases") ? figures.basis().cashCost() : figures.basis().cashIncome();
    return Wording.literal(cash ? "when received or paid" : "by the day of the invoice");
  }

  private List<LineItem> items(String code, int quarter) {
    Period period = period(quarter);
    return switch (code) {
      case "sales" -> sales(period).stream().map(item -> item.with(item.gross())).toList();
      case "gst on sales" ->
          sales(period).stream()
              .filter(item -> item.tax().signum() != 0)
              .map(item -> item.with(item.tax()))
              .toList();
      default -> bought(period);
    };
  }

  private List<LineItem> sales(Period period) {
    List<LineItem> tips = figures.income().parts().getOrDefault(IncomePart.TIPS, List.of());
    return LineItem.within(period, LineItem.of("turnover", figures.income().items())).stream()
        .filter(item -> !tips.contains(item))
        .toList();
  }

  private List<LineItem> bought(Period period) {
    if (!figures.input().book().settings().inputTaxRecovered()) {
      return List.of();
    }
    CategoryMap categories =
        new CategoryMap(AuJurisdiction.REGIME, figures.input().taxYear().last(), rates);
    return LineItem.within(
        period, InputTax.of(figures.input().book(), categories, figures.basis().cashCost()));
  }

  /** A label of a quarter's statement, and what stands there. */
  private record Printed(int quarter, Rate label, SummaryLine line) {}

  /** Each label with the day it is due, exact and in the whole dollars to enter. */
  TaxTable table(List<SummaryLine> summary) {
    List<Printed> printed = new ArrayList<>();
    for (int quarter : quarters()) {
      for (String code : CODES) {
        rates
            .ask(TABLE, code, figures.input().taxYear().last())
            .ifPresent(
                label ->
                    SummaryLine.find(summary, prefix(quarter) + label.value())
                        .ifPresent(line -> printed.add(new Printed(quarter, label, line))));
      }
    }
    return TaxTable.byQuarter(Message.of("australia.statements"), figures(printed))
        .placedOnPage()
        .remarked(Message.of("australia.statements.remark"));
  }

  private FigureTable figures(List<Printed> printed) {
    return FiguresOf.rows(printed)
        .count("quarter", Printed::quarter)
        .column("from", one -> period(one.quarter()).first().toString())
        .column("to", one -> period(one.quarter()).last().toString())
        .column("due", one -> due(one.quarter()).map(LocalDate::toString).orElse(""))
        .column("label", one -> one.label().value())
        .column("name", one -> one.label().name())
        .amount("amount", one -> one.line().amount())
        .amount("whole_dollars", one -> WholeDollars.cut(one.line().amount()))
        .named("activity-statement");
  }

  /** The day on which the quarter's statement is due, moved off a weekend. */
  Optional<LocalDate> due(int quarter) {
    LocalDate first = figures.input().taxYear().first();
    return rates
        .find("au/year", "statement " + quarter, first)
        .map(rate -> BusinessDay.next(rate.dayIn(first.getYear())));
  }
}

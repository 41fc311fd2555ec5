package clenchbook.tax.jurisdiction.de;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.Income;
import clenchbook.tax.income.Sold;
import clenchbook.tax.jurisdiction.BusinessDay;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Bases;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The advance returns of a year or of one quarter, code by code: {@code 81} in a quarter's own run,
 * {@code Q1 81} in a year's.
 */
final class AdvanceReturns {
  private static final String TABLE = "de/advance-return";
  private static final List<String> CODES =
      List.of(
          AdvanceReturn.STANDARD,
          AdvanceReturn.REDUCED,
          AdvanceReturn.OTHER,
          AdvanceReturn.EXEMPT,
          "input tax",
          "payable");

  private final YearFigures figures;
  private final SmallBusiness small;
  private final List<LineItem> bought;
  private final RateLookup rates;

  /**
   * Of a year's figures.
   *
   * @param bought input tax by the day of the purchase
   */
  AdvanceReturns(
      YearFigures figures, SmallBusiness small, List<LineItem> bought, RateLookup rates) {
    this.figures = figures;
    this.small = small;
    this.bought = bought;
    this.rates = rates;
  }

  /** Whether sales count when the money comes, rather than by the bill. */
  static boolean byReceipts(YearFigures figures) {
    return figures.input().book().settings().countsCash() && figures.basis().cashIncome();
  }

  private List<Income.Sale> sales() {
    if (byReceipts(figures)) {
      return figures.income().sales();
    }
    List<Income.Sale> sales = new ArrayList<>();
    for (Billed bill : figures.billed()) {
      if (bill.isIncome()) {
        bill.lines()
            .forEach(
                line ->
                    sales.add(new Income.Sale(Sold.of(bill, line), LineItem.of("", bill, line))));
      }
    }
    return sales;
  }

  List<Integer> quarters() {
    return figures.input().quarter().map(List::of).orElse(List.of(1, 2, 3, 4));
  }

  AdvanceReturn of(int quarter) {
    return new AdvanceReturn(figures, small, rates, period(quarter), sales(), bought);
  }

  private Period period(int quarter) {
    return figures.input().taxYear().quarter(quarter);
  }

  /** A line for each code, opening to its rows. */
  void addTo(SummaryBuilder lines) {
    for (int quarter : quarters()) {
      AdvanceReturn made = of(quarter);
      Wording sold =
          byReceipts(figures) ? Bases.WHEN_RECEIVED : Wording.literal("by the day of the invoice");
      add(lines, quarter, AdvanceReturn.STANDARD, made.base(AdvanceReturn.STANDARD), sold);
      add(lines, quarter, AdvanceReturn.REDUCED, made.base(AdvanceReturn.REDUCED), sold);
      List<LineItem> other = made.base(AdvanceReturn.OTHER);
      if (!other.isEmpty()) {
        add(lines, quarter, AdvanceReturn.OTHER, other, sold);
      }
      List<LineItem> exempt = made.base(AdvanceReturn.EXEMPT);
      if (!exempt.isEmpty()) {
        add(lines, quarter, AdvanceReturn.EXEMPT, exempt, sold);
      }
      add(
          lines,
          quarter,
          "input tax",
          made.inputTax(),
          Wording.literal("by the day of the purchase"));
      add(lines, quarter, "payable", made.payable(), Bases.COMPUTED);
    }
  }

  private void add(
      SummaryBuilder lines, int quarter, String code, List<LineItem> items, Wording basis) {
    lines
        .scheme()
        .find(TABLE, code)
        .ifPresent(head -> lines.tabled(named(head, quarter), items, basis));
  }

  private LineHead named(LineHead head, int quarter) {
    return new LineHead(
        prefix(quarter) + head.line(), head.name() + ", " + period(quarter).text(), head.source());
  }

  private String prefix(int quarter) {
    return figures.wholeYear() ? "Q" + quarter + " " : "";
  }

  /** A code of a quarter's return, what stands there, and the tax on it; blank where none is. */
  private record Printed(int quarter, Rate label, SummaryLine line, String tax) {}

  /** Each code with its tax and the day the return is due. */
  TaxTable table(List<SummaryLine> summary) {
    List<Printed> printed = new ArrayList<>();
    for (int quarter : quarters()) {
      AdvanceReturn made = of(quarter);
      for (String code : CODES) {
        rates
            .ask(TABLE, code, figures.input().taxYear().last())
            .ifPresent(
                label ->
                    SummaryLine.find(summary, prefix(quarter) + label.value())
                        .map(line -> new Printed(quarter, label, line, tax(code, made)))
                        .ifPresent(printed::add));
      }
    }
    return TaxTable.byQuarter(Message.of("germany.advance"), figures(printed))
        .said("name", printed.stream().map(one -> one.label().said()).toList())
        .placedOnPage()
        .remarked(Message.of("germany.advance.remark"));
  }

  private FigureTable figures(List<Printed> printed) {
    return FiguresOf.rows(printed)
        .count("quarter", Printed::quarter)
        .column("from", one -> period(one.quarter()).first().toString())
        .column("to", one -> period(one.quarter()).last().toString())
        .column("due", one -> due(one.quarter()).map(LocalDate::toString).orElse(""))
        .column("code", one -> one.label().value())
        .column("name", one -> one.label().name())
        .amount("amount", one -> one.line().amount())
        .column("tax", Printed::tax)
        .named("advance-return");
  }

  private static String tax(String code, AdvanceReturn made) {
    return switch (code) {
      case AdvanceReturn.STANDARD, AdvanceReturn.REDUCED, AdvanceReturn.OTHER ->
          made.tax(code).toPlainString();
      default -> "";
    };
  }

  /** The day on which the quarter's return is due, moved off a weekend. */
  Optional<LocalDate> due(int quarter) {
    LocalDate first = figures.input().taxYear().first();
    return rates
        .find("de/year", "advance " + quarter, first)
        .map(rate -> BusinessDay.next(rate.dayIn(first.getYear())));
  }

  /** Sales without tax that stand under no code. */
  BigDecimal elsewhere() {
    return quarters().stream()
        .map(quarter -> of(quarter).elsewhere())
        .reduce(figures.unit().zero(), BigDecimal::add);
  }
}

package clenchbook.tax.jurisdiction.de;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.Income;
import clenchbook.tax.income.Sold;
import clenchbook.tax.jurisdiction.BusinessDay;
import clenchbook.tax.jurisdiction.Quarters;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Bases;
import clenchbook.tax.page.Sentence;
import clenchbook.tax.page.Wording;
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

  /** Each code with its tax and the day the return is due. */
  TaxTable table(List<SummaryLine> summary) {
    List<List<String>> rows = new ArrayList<>();
    for (int quarter : quarters()) {
      String due = due(quarter).map(LocalDate::toString).orElse("");
      AdvanceReturn made = of(quarter);
      for (String code :
          List.of(
              AdvanceReturn.STANDARD,
              AdvanceReturn.REDUCED,
              AdvanceReturn.OTHER,
              AdvanceReturn.EXEMPT,
              "input tax",
              "payable")) {
        row(summary, quarter, due, code, made).ifPresent(rows::add);
      }
    }
    return TaxTable.byQuarter(
            Message.literal("VAT advance returns"),
            new FigureTable(
                "advance-return",
                List.of("quarter", "from", "to", "due", "code", "name", "amount", "tax"),
                rows))
        .placedOnPage()
        .remarked(
            Sentence.of(
                "The due days are from memory (§ 18 UStG); with a standing extension each is a"
                    + " month later. The tax on 81 and 86 stands in figures/advance-return.csv."));
  }

  private Optional<List<String>> row(
      List<SummaryLine> summary, int quarter, String due, String code, AdvanceReturn made) {
    return rates
        .ask(TABLE, code, figures.input().taxYear().last())
        .flatMap(
            label ->
                SummaryLine.find(summary, prefix(quarter) + label.value())
                    .map(
                        line ->
                            Quarters.row(
                                quarter,
                                period(quarter),
                                due,
                                List.of(
                                    label.value(),
                                    label.name(),
                                    line.amount().toPlainString(),
                                    tax(code, made)))));
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

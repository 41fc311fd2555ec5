package clenchbook.tax.jurisdiction.us;

import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.StockValue;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Schedule C line by line, and an estimate of self-employment tax from its last line. */
final class UsSummary {
  /** The table of the lines of the self-employment tax, and the code of the tax itself there. */
  static final String SELF_EMPLOYMENT_LINES = "us/schedule-se";

  static final String TAX = "tax";

  private final YearFigures figures;
  private final SummaryBuilder lines;
  private final RateLookup rates;

  UsSummary(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    this.figures = figures;
    this.lines = lines;
    this.rates = rates;
  }

  void build() {
    Wording income = figures.basis().word();
    SummaryLine receipts =
        lines.rows(
            "gross receipts", LineItem.of("gross receipts", figures.income().items()), income);
    SummaryLine returns =
        lines.rows("returns", LineItem.of("returns", figures.income().items()), income);
    SummaryLine net = lines.total("net receipts", List.of(receipts), List.of(returns));
    SummaryLine sold = goods();
    SummaryLine goods = lines.total("cost of goods", List.of(sold), List.of());
    SummaryLine gross = lines.total("gross profit", List.of(net), List.of(goods));
    SummaryLine other = lines.rows("other income", List.of(), income);
    SummaryLine all = lines.total("gross income", List.of(gross, other), List.of());
    costs(all);
  }

  private SummaryLine goods() {
    Wording basis = figures.basis().costWord();
    List<LineItem> bought = figures.goods().stream().map(item -> item.on("purchases")).toList();
    if (figures.basis().cashCost()) {
      Wording whenPaid =
          Wording.of(basis.file() + ": when paid", "america.basis.whenPaid", basis.said());
      SummaryLine purchases = lines.rows("purchases", bought, whenPaid);
      return lines.total("cost of goods sold", List.of(purchases), List.of());
    }
    StockValue stock = figures.input().stock();
    SummaryLine opening =
        stockLine("opening inventory", stock.opening(), "stock before the first day");
    SummaryLine purchases = lines.rows("purchases", bought, basis);
    SummaryLine available =
        lines.total("inventory available", List.of(opening, purchases), List.of());
    SummaryLine closing = stockLine("closing inventory", stock.closing(), "stock on the last day");
    return lines.total("cost of goods sold", List.of(available), List.of(closing));
  }

  private SummaryLine stockLine(String code, BigDecimal value, String how) {
    return lines.figure(lines.scheme().head(code), figures.unit().round(value), how);
  }

  private void costs(SummaryLine grossIncome) {
    List<LineItem> counted = new ArrayList<>();
    figures.otherCosts().stream().filter(item -> !item.code().equals("home")).forEach(counted::add);
    counted.addAll(figures.vehicleLine());
    counted.addAll(figures.depreciation());
    LineItem.of("bad debts", figures.income().items()).forEach(counted::add);
    List<SummaryLine> costs = lines.costs(counted, figures.basis().costWord());
    SummaryLine total = lines.total("total expenses", costs, List.of());
    SummaryLine tentative = lines.total("tentative profit", List.of(grossIncome), List.of(total));
    SummaryLine home =
        lines.rows(
            "home", LineItem.of("home", figures.expenses().items()), figures.basis().costWord());
    SummaryLine profit = lines.total("net profit", List.of(tentative), List.of(home));
    if (figures.wholeYear()) {
      selfEmployment(profit);
    }
  }

  private void selfEmployment(SummaryLine profit) {
    LocalDate yearEnd = figures.input().taxYear().last();
    Optional<SelfEmploymentTax> found =
        SelfEmploymentTax.of(profit.amount(), yearEnd, rates, figures.unit());
    found.ifPresent(tax -> addSelfEmployment(profit, tax));
  }

  private void addSelfEmployment(SummaryLine profit, SelfEmploymentTax tax) {
    figure("net profit", profit.amount(), "line " + profit.head().line());
    figure("net earnings", tax.netEarnings(), percent("net earnings share") + " of net profit");
    figure(
        "social security",
        tax.socialSecurity(),
        percent("social security") + " of net earnings up to the base");
    figure("medicare", tax.medicare(), percent("medicare") + " of net earnings");
    figure(TAX, tax.tax(), "the two lines above; nothing below the threshold of net earnings");
    figure("deductible part", tax.deductible(), percent("deductible part") + " of the tax");
    LocalDate yearEnd = figures.input().taxYear().last();
    QualifiedIncome.of(profit.amount(), tax.deductible(), yearEnd, rates, figures.unit())
        .ifPresent(
            found ->
                lines.estimate(
                    new LineHead(
                        "QBI",
                        Wording.of(
                            "Deduction for qualified business income (estimate)",
                            "america.line.qualifiedIncome"),
                        found.source()),
                    found.deduction(),
                    "of net profit less the deductible part of self-employment tax, "
                        + found.income().toPlainString()
                        + "; the limit by taxable income is not in it"));
  }

  private String percent(String code) {
    LocalDate yearEnd = figures.input().taxYear().last();
    return rates.ask("us/self-employment", code, yearEnd).map(Rate::value).orElse("?") + " %";
  }

  private void figure(String code, BigDecimal amount, String how) {
    LocalDate yearEnd = figures.input().taxYear().last();
    lines
        .scheme()
        .find(SELF_EMPLOYMENT_LINES, code)
        .ifPresent(
            head ->
                lines.estimate(
                    rates
                        .ask(
                            "us/self-employment",
                            code.equals("net earnings") ? "net earnings share" : code,
                            yearEnd)
                        .map(rate -> head.from(rate.citation()))
                        .orElse(head),
                    amount,
                    how));
  }
}

package clenchbook.tax.jurisdiction.ca;

import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.CapitalItems;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Bases;
import clenchbook.tax.page.Wording;
import clenchbook.tax.year.StockValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The lines of Form T2125, with capital cost allowance beside them as an estimate. */
final class CaSummary {
  static final String CONTRACTED = "subcontracts";

  private final YearFigures figures;
  private final SummaryBuilder lines;

  CaSummary(YearFigures figures, SummaryBuilder lines) {
    this.figures = figures;
    this.lines = lines;
  }

  CapitalItems build(CcaClasses classes) {
    SummaryLine sales =
        lines.rows("sales", LineItem.of("sales", figures.income().items()), figures.basis().word());
    SummaryLine gross = lines.total("gross income", List.of(sales), List.of());
    SummaryLine goods = costOfGoods();
    SummaryLine grossProfit = lines.total("gross profit", List.of(gross), List.of(goods));
    List<SummaryLine> costs = lines.costs(costs(), figures.basis().costWord());
    SummaryLine total = lines.total("total expenses", costs, List.of());
    lines.total("net income", List.of(grossProfit), List.of(total));
    if (figures.wholeYear()) {
      estimate(classes.most());
    }
    return CapitalItems.NONE;
  }

  private void estimate(BigDecimal most) {
    if (most.signum() != 0) {
      LineHead head = lines.scheme().head("cca");
      LineHead named =
          new LineHead(
              head.line(),
              Wording.of(
                  head.name() + " (estimate, in no total)",
                  "canada.line.estimate",
                  head.named().said()),
              head.source());
      lines.estimate(named, most, "the most of each class, if the most was claimed before");
    }
  }

  private SummaryLine costOfGoods() {
    Wording basis = figures.basis().costWord();
    List<LineItem> bought = new ArrayList<>();
    figures.goods().forEach(item -> bought.add(item.on("purchases")));
    bought.addAll(LineItem.of("purchases", figures.expenses().items()));
    List<LineItem> hired = LineItem.of(CONTRACTED, figures.expenses().items());
    List<SummaryLine> plus = new ArrayList<>();
    List<SummaryLine> minus = new ArrayList<>();
    if (!figures.basis().cashCost()) {
      StockValue stock = figures.input().stock();
      plus.add(stock("opening stock", stock.opening(), "stock before the first day"));
      plus.add(lines.rows("purchases", bought, basis));
      addHired(plus, hired, basis);
      minus.add(stock("closing stock", stock.closing(), "stock on the last day"));
    } else {
      plus.add(lines.rows("purchases", bought, basis));
      addHired(plus, hired, basis);
    }
    return lines.total("cost of goods", plus, minus);
  }

  private void addHired(List<SummaryLine> plus, List<LineItem> hired, Wording basis) {
    if (!hired.isEmpty()) {
      plus.add(lines.rows(CONTRACTED, hired, basis));
    }
  }

  private SummaryLine stock(String code, BigDecimal value, String how) {
    BigDecimal amount = figures.unit().round(value);
    BigDecimal zero = figures.unit().zero();
    LineItem item =
        new LineItem(code, "tax-summary", 0, figures.period().last(), how, amount, zero, amount);
    return lines.rows(code, amount.signum() == 0 ? List.of() : List.of(item), Bases.MOVING_AVERAGE);
  }

  private List<LineItem> costs() {
    List<LineItem> counted = new ArrayList<>();
    figures.otherCosts().stream()
        .filter(item -> !item.code().equals("purchases") && !item.code().equals(CONTRACTED))
        .forEach(counted::add);
    counted.addAll(figures.vehicleLine());
    counted.addAll(LineItem.of("bad debts", figures.income().items()));
    return counted;
  }
}

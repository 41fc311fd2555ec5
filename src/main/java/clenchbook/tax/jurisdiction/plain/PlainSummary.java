package clenchbook.tax.jurisdiction.plain;

import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.year.StockValue;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Income, goods and categories of cost, in no country's form. */
final class PlainSummary {
  private final YearFigures figures;
  private final SummaryBuilder lines;

  PlainSummary(YearFigures figures, SummaryBuilder lines) {
    this.figures = figures;
    this.lines = lines;
  }

  void build() {
    Wording basis = figures.basis().word();
    List<SummaryLine> income = new ArrayList<>();
    for (String code : List.of("turnover", "tips", "refunds")) {
      income.add(lines.rows(code, LineItem.of(code, figures.income().items()), basis));
    }
    SummaryLine all = lines.total("total income", income, List.of());
    List<LineItem> counted = new ArrayList<>(goods());
    counted.addAll(figures.otherCosts());
    counted.addAll(figures.vehicleLine());
    counted.addAll(LineItem.of("bad debts", figures.income().items()));
    List<SummaryLine> costs = lines.costs(counted, figures.basis().costWord());
    SummaryLine total = lines.total("total expenses", costs, List.of());
    lines.total("profit", List.of(all), List.of(total));
  }

  private List<LineItem> goods() {
    String code = figures.regime().codes().goods(figures.basis());
    List<LineItem> goods = new ArrayList<>();
    figures.goods().forEach(item -> goods.add(item.on(code)));
    if (!figures.basis().cashCost()) {
      StockValue stock = figures.input().stock();
      goods.add(change(code, "stock at the beginning", figures.unit().round(stock.opening())));
      goods.add(
          change(code, "less stock at the end", figures.unit().round(stock.closing()).negate()));
    }
    return goods.stream().filter(item -> item.net().signum() != 0).toList();
  }

  private LineItem change(String code, String what, BigDecimal amount) {
    LocalDate day = figures.period().last();
    return new LineItem(code, "tax-summary", 0, day, what, amount, figures.unit().zero(), amount);
  }
}

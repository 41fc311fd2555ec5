package clenchbook.tax.jurisdiction.au;

import clenchbook.book.Asset;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.CapitalItems;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Bases;
import clenchbook.tax.page.Wording;
import clenchbook.tax.year.StockValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Item P8 of the business and professional items schedule, by the names of its boxes. */
final class AuSummary {
  private final YearFigures figures;
  private final SummaryBuilder lines;
  private final AuAssets assets;

  AuSummary(YearFigures figures, SummaryBuilder lines, AuAssets assets) {
    this.figures = figures;
    this.lines = lines;
    this.assets = assets;
  }

  CapitalItems build() {
    List<LineItem> sold = sold();
    List<LineItem> income = new ArrayList<>(LineItem.of("turnover", figures.income().items()));
    income.addAll(sold);
    SummaryLine turnover = lines.rows("turnover", income, figures.basis().word());
    SummaryLine gross = lines.total("gross income", List.of(turnover), List.of());
    List<SummaryLine> all = new ArrayList<>(List.of(costOfSales()));
    all.addAll(lines.costs(costs(), figures.basis().costWord()));
    SummaryLine total = lines.total("total expenses", all, List.of());
    lines.total("net profit", List.of(gross), List.of(total));
    return new CapitalItems(List.of(), sold);
  }

  private SummaryLine costOfSales() {
    Wording basis = figures.basis().costWord();
    List<LineItem> bought = new ArrayList<>();
    figures.goods().forEach(item -> bought.add(item.on("purchases")));
    bought.addAll(LineItem.of("purchases", figures.expenses().items()));
    if (figures.basis().cashCost()) {
      SummaryLine purchases = lines.rows("purchases", bought, basis);
      return lines.total("cost of sales", List.of(purchases), List.of());
    }
    StockValue stock = figures.input().stock();
    SummaryLine opening = stock("opening stock", stock.opening(), "stock before the first day");
    SummaryLine purchases = lines.rows("purchases", bought, basis);
    SummaryLine closing = stock("closing stock", stock.closing(), "stock on the last day");
    return lines.total("cost of sales", List.of(opening, purchases), List.of(closing));
  }

  private SummaryLine stock(String code, BigDecimal value, String how) {
    BigDecimal amount = figures.unit().round(value);
    LineItem item =
        new LineItem(
            code,
            "tax-summary",
            0,
            figures.period().last(),
            how,
            amount,
            figures.unit().zero(),
            amount);
    return lines.rows(code, amount.signum() == 0 ? List.of() : List.of(item), Bases.MOVING_AVERAGE);
  }

  private List<LineItem> costs() {
    List<LineItem> counted = new ArrayList<>();
    figures.otherCosts().stream()
        .filter(item -> !item.code().equals("purchases"))
        .forEach(counted::add);
    counted.addAll(figures.vehicleLine());
    counted.addAll(figures.depreciation());
    counted.addAll(LineItem.of("bad debts", figures.income().items()));
    return counted;
  }

  private List<LineItem> sold() {
    return figures.input().book().assets().stream()
        .filter(asset -> asset.sold().filter(figures.period()::holds).isPresent())
        .map(this::item)
        .filter(item -> item.net().signum() != 0)
        .toList();
  }

  private LineItem item(Asset asset) {
    BigDecimal amount = assets.income(asset);
    return new LineItem(
        "turnover",
        asset.source().sheet(),
        asset.source().row(),
        asset.sold().orElseThrow(),
        "sold: " + asset.name(),
        amount,
        figures.unit().zero(),
        amount);
  }
}

package clenchbook.tax.jurisdiction.uk;

import clenchbook.book.Asset;
import clenchbook.tax.assets.AssetClasses;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.StockValue;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The boxes of the full self-employment pages. */
final class UkSummary {
  private final YearFigures figures;
  private final SummaryBuilder lines;
  private final RateLookup rates;

  UkSummary(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    this.figures = figures;
    this.lines = lines;
    this.rates = rates;
  }

  void build() {
    Wording basis = figures.basis().word();
    SummaryLine turnover =
        lines.rows("turnover", LineItem.of("turnover", figures.income().items()), basis);
    SummaryLine other = lines.rows("other income", proceeds(), figures.basis().costWord());
    List<LineItem> counted = new ArrayList<>(figures.otherCosts());
    counted.addAll(goods());
    counted.addAll(figures.vehicleLine());
    counted.addAll(equipment());
    counted.addAll(LineItem.of("bad debts", figures.income().items()));
    List<SummaryLine> costs = lines.costs(counted, figures.basis().costWord());
    SummaryLine total = lines.total("total expenses", costs, List.of());
    SummaryLine profit = lines.total("net profit", List.of(turnover, other), List.of(total));
    if (figures.wholeYear()) {
      NationalInsurance.of(profit.amount(), figures.input().taxYear().last(), rates, figures.unit())
          .ifPresent(this::addClass4);
    }
  }

  private void addClass4(NationalInsurance class4) {
    LineHead head =
        new LineHead(
            "Class 4",
            Wording.of("Class 4 National Insurance (estimate)", "britain.line.class4"),
            class4.source());
    lines.estimate(head, class4.amount(), class4.rule());
  }

  private List<LineItem> goods() {
    List<LineItem> goods = new ArrayList<>();
    figures.goods().forEach(item -> goods.add(item.on("cost of goods")));
    if (!figures.basis().cashCost()) {
      StockValue stock = figures.input().stock();
      goods.add(change("stock at the beginning", figures.unit().round(stock.opening())));
      goods.add(change("less stock at the end", figures.unit().round(stock.closing()).negate()));
    }
    return goods.stream().filter(item -> item.net().signum() != 0).toList();
  }

  private LineItem change(String what, BigDecimal amount) {
    LocalDate day = figures.period().last();
    return new LineItem(
        "cost of goods", "tax-summary", 0, day, what, amount, figures.unit().zero(), amount);
  }

  /**
   * On the cash basis: what the year's equipment cost, cars left out, and a vehicle under
   * simplified mileage too.
   */
  List<LineItem> equipment() {
    if (!figures.basis().cashCost()) {
      return List.of();
    }
    return figures.input().book().assets().stream()
        .filter(asset -> figures.period().holds(asset.bought()) && isExpensed(asset))
        .map(asset -> item("equipment", asset, asset.bought(), business(asset, asset.cost())))
        .filter(item -> item.net().signum() != 0)
        .toList();
  }

  /** On the cash basis: what expensed equipment brought when sold. */
  List<LineItem> proceeds() {
    if (!figures.basis().cashCost()) {
      return List.of();
    }
    return figures.input().book().assets().stream()
        .filter(
            asset -> asset.sold().filter(figures.period()::holds).isPresent() && isExpensed(asset))
        .map(
            asset ->
                item(
                    "other income",
                    asset,
                    asset.sold().orElseThrow(),
                    business(asset, asset.proceeds())))
        .filter(item -> item.net().signum() != 0)
        .toList();
  }

  private boolean isExpensed(Asset asset) {
    return switch (AssetKind.of(asset, new AssetClasses(UkJurisdiction.REGIME, rates))) {
      case CAR -> false;
      case VEHICLE, MOTORCYCLE -> !figures.vehicle().byMileage();
      case EQUIPMENT -> true;
    };
  }

  private BigDecimal business(Asset asset, Optional<BigDecimal> amount) {
    BigDecimal percent = asset.businessUsePercent().orElse(BigDecimal.valueOf(100));
    return figures.unit().round(amount.orElse(BigDecimal.ZERO).multiply(percent).movePointLeft(2));
  }

  private LineItem item(String code, Asset asset, LocalDate day, BigDecimal amount) {
    return new LineItem(
        code,
        asset.source().sheet(),
        asset.source().row(),
        day,
        asset.name(),
        amount,
        figures.unit().zero(),
        amount);
  }
}

package clenchbook.tax.jurisdiction.de;

import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.CapitalItems;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Bases;
import clenchbook.tax.page.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The lines of the income-surplus statement: costs without tax, and the tax received, paid and paid
 * over as income and cost of their own; a small business enters what it paid in all.
 */
final class DeSummary {
  /** The code of tax paid over to the tax office. */
  static final String PAID_OVER = "vat paid over";

  private final YearFigures figures;
  private final SummaryBuilder lines;
  private final List<LineItem> inputTax;

  /**
   * For one period.
   *
   * @param inputTax the tax on purchases that comes back, by the day paid
   */
  DeSummary(YearFigures figures, SummaryBuilder lines, List<LineItem> inputTax) {
    this.figures = figures;
    this.lines = lines;
    this.inputTax = inputTax;
  }

  CapitalItems build(DeAssets assets) {
    List<LineItem> sold = sold(assets);
    List<LineItem> retired = retired();
    List<SummaryLine> income = income(sold);
    SummaryLine total = lines.total("total income", income, List.of());
    List<SummaryLine> costs = lines.costs(costs(retired), figures.basis().costWord());
    SummaryLine expenses = lines.total("total expenses", costs, List.of());
    lines.total("profit", List.of(total), List.of(expenses));
    return new CapitalItems(List.of(), sold, retired);
  }

  private List<SummaryLine> income(List<LineItem> sold) {
    List<SummaryLine> made = new ArrayList<>();
    Wording basis = figures.basis().word();
    for (String code : List.of(DeIncomeLines.SMALL, DeIncomeLines.TAXED, DeIncomeLines.UNTAXED)) {
      add(made, code, LineItem.of(code, figures.income().items()), basis);
    }
    add(made, "vat received", vatReceived(), basis);
    add(made, "vat refunded", refunded(), Bases.WHEN_RECEIVED);
    add(made, "asset sales", sold, Bases.WHEN_SOLD);
    return made;
  }

  private void add(List<SummaryLine> made, String code, List<LineItem> items, Wording basis) {
    if (!items.isEmpty()) {
      made.add(lines.rows(code, items, basis));
    }
  }

  private List<LineItem> vatReceived() {
    return figures.income().items().stream()
        .filter(item -> item.tax().signum() != 0)
        .map(item -> item.on("vat received").with(item.tax()))
        .toList();
  }

  /** Tax that the tax office gave back: a purchase of tax paid over with an amount below zero. */
  private List<LineItem> refunded() {
    return LineItem.of(PAID_OVER, figures.otherCosts()).stream()
        .filter(item -> item.net().signum() < 0)
        .map(item -> item.on("vat refunded").with(item.net().negate()))
        .toList();
  }

  private List<LineItem> costs(List<LineItem> retired) {
    List<LineItem> counted = new ArrayList<>();
    figures.otherCosts().stream()
        .filter(item -> !item.code().equals(PAID_OVER) || item.net().signum() >= 0)
        .forEach(counted::add);
    figures.goods().forEach(item -> counted.add(item.on("goods")));
    counted.addAll(figures.vehicleLine());
    counted.addAll(figures.depreciation());
    counted.addAll(retired);
    LineItem.within(figures.period(), inputTax).forEach(item -> counted.add(item.on("input tax")));
    return counted;
  }

  private List<LineItem> sold(DeAssets assets) {
    return soldAssets().stream()
        .map(asset -> item("asset sales", asset, assets.proceeds(asset)))
        .filter(item -> item.net().signum() != 0)
        .toList();
  }

  private List<LineItem> retired() {
    return soldAssets().stream()
        .map(asset -> item("book values", asset, DeAssets.bookValue(asset, soldOn(asset))))
        .filter(item -> item.net().signum() != 0)
        .toList();
  }

  /** Those sold in the year; a quarter leaves assets out. */
  private List<DepreciatedAsset> soldAssets() {
    if (!figures.wholeYear()) {
      return List.of();
    }
    return figures.assets().stream()
        .filter(DeAssets::isOfBusiness)
        .filter(asset -> asset.asset().sold().filter(figures.period()::holds).isPresent())
        .toList();
  }

  private static LocalDate soldOn(DepreciatedAsset asset) {
    Optional<LocalDate> sold = asset.asset().sold();
    return sold.orElse(asset.asset().bought());
  }

  private LineItem item(String code, DepreciatedAsset asset, BigDecimal amount) {
    return new LineItem(
        code,
        asset.asset().source().sheet(),
        asset.asset().source().row(),
        soldOn(asset),
        "sold: " + asset.asset().name(),
        amount,
        figures.unit().zero(),
        amount);
  }
}

package clenchbook.tax.figures;

import clenchbook.book.Setting;
import clenchbook.book.TaxKind;
import clenchbook.book.TaxRate;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.income.Income;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.vehicle.DistanceUnit;
import clenchbook.tax.vehicle.MileageLog;
import clenchbook.tax.vehicle.Reconstructed;
import clenchbook.tax.vehicle.Vehicle;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.TaxBasis;
import clenchbook.tax.year.YearEndInput;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Everything worked out for one period before it is laid out in the regime's lines.
 *
 * @param input what it was made from
 * @param billed everything billed, of any date
 * @param period the period
 * @param basis the basis
 * @param income the income
 * @param expenses the costs
 * @param log the mileage log
 * @param vehicle the vehicle both ways
 * @param assets the asset register
 * @param reconstructed what was driven without a row in the log
 */
public record YearFigures(
    YearEndInput input,
    List<Billed> billed,
    Period period,
    TaxBasis basis,
    Income income,
    Expenses expenses,
    MileageLog log,
    Vehicle vehicle,
    List<DepreciatedAsset> assets,
    List<Reconstructed> reconstructed) {

  public Regime regime() {
    return input.taxYear().regime();
  }

  public MinorUnit unit() {
    return input.book().settings().minorUnit();
  }

  public boolean wholeYear() {
    return input.quarter().isEmpty();
  }

  public DistanceUnit distanceUnit() {
    return DistanceUnit.of(input.book().settings().text(Setting.DISTANCE_UNIT));
  }

  /** The kind of each tax code of the book, by code. */
  public TreeMap<String, TaxKind> taxKinds() {
    TreeMap<String, TaxKind> kinds = new TreeMap<>();
    for (TaxRate rate : input.book().taxRates()) {
      kinds.put(rate.code(), rate.kind());
    }
    return kinds;
  }

  /** The costs of goods bought, row by row. */
  public List<LineItem> goods() {
    return LineItem.of(Expenses.GOODS, expenses.items());
  }

  /** The costs that are neither goods, vehicle nor parking. */
  public List<LineItem> otherCosts() {
    return expenses.items().stream()
        .filter(
            item -> !item.code().equals(Expenses.GOODS) && !item.code().equals(Expenses.PARKING))
        .toList();
  }

  /** Everything that counts on the vehicle's line: the way that counts, and parking and tolls. */
  public List<LineItem> vehicleLine() {
    String code = regime().codes().vehicle();
    List<LineItem> items = new ArrayList<>(LineItem.within(period, vehicle.counted()));
    LineItem.of(Expenses.PARKING, expenses.items()).forEach(item -> items.add(item.on(code)));
    return items;
  }

  /** The depreciation of the year that counts: a vehicle's only where its actual cost counts. */
  public List<LineItem> depreciation() {
    if (!wholeYear()) {
      return List.of();
    }
    return assets.stream()
        .filter(asset -> asset.thisYear().signum() != 0)
        .filter(asset -> !asset.vehicle() || !vehicle.byMileage())
        .map(this::depreciationItem)
        .toList();
  }

  /** One asset's depreciation as a row. */
  public LineItem depreciationItem(DepreciatedAsset asset) {
    return new LineItem(
        asset.line(),
        asset.asset().source().sheet(),
        asset.asset().source().row(),
        input.taxYear().last(),
        asset.asset().name(),
        asset.thisYear(),
        unit().zero(),
        asset.thisYear());
  }

  /** The sales of the period for value-added tax, by the date of the bill. */
  public List<LineItem> sales() {
    return billed.stream()
        .filter(Billed::isIncome)
        .flatMap(bill -> bill.lines().stream().map(line -> LineItem.of(line.taxCode(), bill, line)))
        .toList();
  }

  /** What the book says of the tax code. */
  Optional<TaxRate> taxRate(String code) {
    return input.book().taxRates().stream().filter(rate -> rate.code().equals(code)).findFirst();
  }

  /** What the visits of the period were or will be billed without tax, whatever the bill's date. */
  public BigDecimal billedForVisits() {
    return billed.stream()
        .flatMap(bill -> bill.lines().stream())
        .filter(line -> period.holds(line.day()))
        .map(BilledLine::net)
        .reduce(unit().zero(), BigDecimal::add);
  }
}

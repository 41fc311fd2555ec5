package clenchbook.stock;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.stock.bar.BarCuts;
import clenchbook.stock.bar.BarNeed;
import clenchbook.stock.bar.BarPlan;
import clenchbook.stock.bar.ShopLength;
import clenchbook.stock.ledger.Quantity;
import clenchbook.stock.ledger.ShelfMonth;
import clenchbook.stock.ledger.ShelfMonth.Worth;
import clenchbook.stock.orders.StockLine;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The figures of a month's stock as tables for files. */
final class StockTables {

  private StockTables() {}

  static List<FigureTable> of(StockMonth month) {
    return List.of(
        stock(month),
        totals(month),
        summary(month),
        orders(month),
        gas(month),
        barNeeds(month),
        plans(month));
  }

  private static FigureTable summary(StockMonth month) {
    Worth worth = month.total(ShelfMonth::average);
    String currency = month.settings().currency();
    return new FigureTable(
        "stock-summary",
        List.of("figure", "value", "unit"),
        List.of(
            List.of("stock at the month's end", worth.closing().toPlainString(), currency),
            List.of("cost of what was used", worth.used().toPlainString(), currency),
            List.of("difference by count", worth.difference().toPlainString(), currency),
            List.of("to order now", month.orderCost().toPlainString(), currency),
            List.of("shoeing interval", Integer.toString(month.intervalDays()), "days")));
  }

  private static FigureTable stock(StockMonth month) {
    List<String> columns =
        List.of(
            "item",
            "size",
            "bought",
            "used",
            "counted",
            "expected",
            "difference",
            "reorder",
            "kind",
            "unit",
            "supplier",
            "opening",
            "closing",
            "beyond_known_stock",
            "counted_on",
            "opening_value",
            "bought_value",
            "taken_on_value",
            "difference_value",
            "used_value",
            "closing_value",
            "fifo_opening_value",
            "fifo_difference_value",
            "fifo_used_value",
            "fifo_closing_value",
            "use_per_week",
            "spread_per_week",
            "weeks_looked_at",
            "interval_use",
            "weeks_left",
            "reorder_basis",
            "order",
            "economic_order",
            "unit_cost");
    return new FigureTable(
        "stock", columns, month.lines().stream().map(StockTables::stockRow).toList());
  }

  private static List<String> stockRow(StockLine line) {
    ShelfMonth shelf = line.month();
    Worth average = shelf.average();
    Worth fifo = shelf.fifo();
    return List.of(
        shelf.shelf().item(),
        shelf.shelf().size(),
        Quantity.text(shelf.bought()),
        Quantity.text(shelf.used()),
        text(shelf.counted()),
        Quantity.text(shelf.expected()),
        text(shelf.difference()),
        text(line.reorder()),
        line.row().map(row -> row.kind().word()).orElse(""),
        line.unit(),
        line.supplier(),
        Quantity.text(shelf.opening()),
        Quantity.text(shelf.closing()),
        line.made() && !shelf.priced() ? "" : Quantity.text(shelf.beyond()),
        shelf.countedOn().map(Object::toString).orElse(""),
        average.opening().toPlainString(),
        average.bought().toPlainString(),
        average.takenOn().toPlainString(),
        average.difference().toPlainString(),
        average.used().toPlainString(),
        average.closing().toPlainString(),
        fifo.opening().toPlainString(),
        fifo.difference().toPlainString(),
        fifo.used().toPlainString(),
        fifo.closing().toPlainString(),
        tenths(line.use().mean()),
        line.use().spread().map(StockTables::tenths).orElse(""),
        Integer.toString(line.use().weeks()),
        tenths(line.intervalUse()),
        weeksLeft(line).map(StockTables::tenths).orElse(""),
        line.reorder().isPresent() ? line.reorderBasis().name().toLowerCase(Locale.ROOT) : "",
        Quantity.text(line.order()),
        line.economic().map(StockTables::whole).orElse(""),
        unitCost(line));
  }

  /** How many weeks the shelf will last at its mean use; empty without use or known stock. */
  static Optional<BigDecimal> weeksLeft(StockLine line) {
    boolean known = line.month().priced() && line.use().mean().signum() > 0;
    return known
        ? Optional.of(line.month().closing().divide(line.use().mean(), MathContext.DECIMAL64))
        : Optional.empty();
  }

  private static FigureTable totals(StockMonth month) {
    List<String> columns =
        List.of("method", "opening", "bought", "taken_on", "difference", "used", "closing");
    return new FigureTable(
        "stock-value",
        columns,
        List.of(
            totalRow("moving average", month.total(ShelfMonth::average)),
            totalRow("first in first out", month.total(ShelfMonth::fifo))));
  }

  private static List<String> totalRow(String method, Worth worth) {
    return List.of(
        method,
        worth.opening().toPlainString(),
        worth.bought().toPlainString(),
        worth.takenOn().toPlainString(),
        worth.difference().toPlainString(),
        worth.used().toPlainString(),
        worth.closing().toPlainString());
  }

  private static FigureTable orders(StockMonth month) {
    List<String> columns =
        List.of(
            "supplier",
            "item",
            "size",
            "order",
            "unit",
            "packs",
            "per_pack",
            "cost",
            "on_hand",
            "reorder",
            "use_per_week");
    return new FigureTable(
        "order",
        columns,
        month.orders().stream()
            .map(
                line ->
                    List.of(
                        line.supplier(),
                        line.month().shelf().item(),
                        line.month().shelf().size(),
                        Quantity.text(line.order()),
                        line.unit(),
                        line.packs().toPlainString(),
                        Quantity.text(line.pack()),
                        line.orderCost().toPlainString(),
                        Quantity.text(line.month().closing()),
                        text(line.reorder()),
                        tenths(line.use().mean())))
            .toList());
  }

  private static FigureTable gas(StockMonth month) {
    List<String> columns =
        List.of(
            "period",
            "unit",
            "bought",
            "forge_minutes",
            "burn_per_hour",
            "explained",
            "difference",
            "burn_that_explains",
            "basis",
            "purchases_not_counted");
    Mass mass = Mass.of(month.settings());
    return new FigureTable(
        "gas", columns, month.gas().stream().map(gas -> gasRow(gas, mass)).toList());
  }

  private static List<String> gasRow(GasMonth gas, Mass mass) {
    return List.of(
        gas.period(),
        mass.word(),
        mass.text(gas.boughtKg()),
        Quantity.text(gas.burn().totalMinutes()),
        mass.text(gas.burn().kgPerHour()),
        mass.text(gas.burn().explainedKg()),
        mass.text(gas.differenceKg()),
        gas.burn().rateFor(gas.boughtKg()).map(mass::text).orElse(""),
        gas.basis().name().toLowerCase(Locale.ROOT),
        Integer.toString(gas.uncounted()));
  }

  private static FigureTable barNeeds(StockMonth month) {
    List<List<String>> rows = new ArrayList<>();
    for (BarPlan bar : month.bars()) {
      bar.needs().forEach(need -> rows.add(needRow(need, "yes")));
      bar.tooLong().forEach(need -> rows.add(needRow(need, "no")));
    }
    return new FigureTable(
        "bar-needs",
        List.of(
            "bar",
            "bar_size",
            "shoe",
            "shoe_size",
            "length_mm",
            "cut_mm",
            "count",
            "horses",
            "fits_the_bar",
            "length_in",
            "cut_in"),
        rows);
  }

  private static List<String> needRow(BarNeed need, String fits) {
    return List.of(
        need.bar().item(),
        need.bar().size(),
        need.shoe().item(),
        need.shoe().size(),
        Quantity.text(need.lengthMm()),
        Quantity.text(need.cutMm()),
        Integer.toString(need.count()),
        String.join("; ", need.horses()),
        fits,
        ShopLength.INCHES.text(need.lengthMm()),
        ShopLength.INCHES.text(need.cutMm()));
  }

  private static FigureTable plans(StockMonth month) {
    List<List<String>> rows = new ArrayList<>();
    month.bars().forEach(bar -> bar.plan().ifPresent(plan -> BarCuts.rows(bar, plan, rows)));
    return new FigureTable("cutting-plan", BarCuts.COLUMNS, rows);
  }

  static String text(Optional<BigDecimal> quantity) {
    return quantity.map(Quantity::text).orElse("");
  }

  static String tenths(BigDecimal number) {
    return number.setScale(1, RoundingMode.HALF_UP).toPlainString();
  }

  static String whole(BigDecimal number) {
    return number.setScale(0, RoundingMode.HALF_UP).toPlainString();
  }

  private static String unitCost(StockLine line) {
    return line.unitCost().setScale(4, RoundingMode.HALF_UP).toPlainString();
  }

  /** Kilograms or pounds, as Units asks. */
  record Mass(String word, BigDecimal kgPerUnit) {

    static Mass of(Settings settings) {
      return settings.text(Setting.UNITS).equals("imperial")
          ? new Mass("lb", Settings.KG_PER_LB)
          : new Mass("kg", BigDecimal.ONE);
    }

    String text(BigDecimal kg) {
      return kg.divide(kgPerUnit, 2, RoundingMode.HALF_UP).toPlainString();
    }
  }
}

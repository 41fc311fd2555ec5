package clenchbook.stock;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
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
        suppliers(month),
        gas(month),
        barNeeds(month),
        BarCuts.table(month.bars()));
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
    return FiguresOf.rows(month.lines())
        .column("item", line -> line.month().shelf().item())
        .column("size", line -> line.month().shelf().size())
        .column("bought", line -> Quantity.text(line.month().bought()))
        .column("used", line -> Quantity.text(line.month().used()))
        .column("counted", line -> text(line.month().counted()))
        .column("expected", line -> Quantity.text(line.month().expected()))
        .column("difference", line -> text(line.month().difference()))
        .column("reorder", line -> text(line.reorder()))
        .column("kind", line -> line.row().map(row -> row.kind().word()).orElse(""))
        .column("unit", StockLine::unit)
        .column("supplier", StockLine::supplier)
        .column("opening", line -> Quantity.text(line.month().opening()))
        .column("closing", line -> Quantity.text(line.month().closing()))
        .column(
            "beyond_known_stock",
            line ->
                line.made() && !line.month().priced() ? "" : Quantity.text(line.month().beyond()))
        .column("counted_on", line -> line.month().countedOn().map(Object::toString).orElse(""))
        .column("opening_value", line -> line.month().average().opening().toPlainString())
        .column("bought_value", line -> line.month().average().bought().toPlainString())
        .column("taken_on_value", line -> line.month().average().takenOn().toPlainString())
        .column("difference_value", line -> line.month().average().difference().toPlainString())
        .column("used_value", line -> line.month().average().used().toPlainString())
        .column("closing_value", line -> line.month().average().closing().toPlainString())
        .column("fifo_opening_value", line -> line.month().fifo().opening().toPlainString())
        .column("fifo_difference_value", line -> line.month().fifo().difference().toPlainString())
        .column("fifo_used_value", line -> line.month().fifo().used().toPlainString())
        .column("fifo_closing_value", line -> line.month().fifo().closing().toPlainString())
        .column("use_per_week", line -> tenths(line.use().mean()))
        .column("spread_per_week", line -> line.use().spread().map(StockTables::tenths).orElse(""))
        .count("weeks_looked_at", line -> line.use().weeks())
        .column("interval_use", line -> tenths(line.intervalUse()))
        .column("weeks_left", line -> weeksLeft(line).map(StockTables::tenths).orElse(""))
        .column(
            "reorder_basis",
            line ->
                line.reorder().isPresent()
                    ? line.reorderBasis().name().toLowerCase(Locale.ROOT)
                    : "")
        .column("order", line -> Quantity.text(line.order()))
        .column("economic_order", line -> line.economic().map(StockTables::whole).orElse(""))
        .column("unit_cost", line -> unitCost(line))
        .named("stock");
  }

  /** How many weeks the shelf will last at its mean use; empty without use or known stock. */
  static Optional<BigDecimal> weeksLeft(StockLine line) {
    boolean known = line.month().priced() && line.use().mean().signum() > 0;
    return known
        ? Optional.of(line.month().closing().divide(line.use().mean(), MathContext.DECIMAL64))
        : Optional.empty();
  }

  private static FigureTable totals(StockMonth month) {
    return FiguresOf.rows(
            List.of(
                new Method("moving average", month.total(ShelfMonth::average)),
                new Method("first in first out", month.total(ShelfMonth::fifo))))
        .column("method", Method::name)
        .amount("opening", method -> method.worth().opening())
        .amount("bought", method -> method.worth().bought())
        .amount("taken_on", method -> method.worth().takenOn())
        .amount("difference", method -> method.worth().difference())
        .amount("used", method -> method.worth().used())
        .amount("closing", method -> method.worth().closing())
        .named("stock-value");
  }

  /** A way to value stock, and what it makes of the month. */
  private record Method(String name, Worth worth) {}

  private static FigureTable orders(StockMonth month) {
    return FiguresOf.rows(month.orders())
        .column("supplier", StockLine::supplier)
        .column("item", line -> line.month().shelf().item())
        .column("size", line -> line.month().shelf().size())
        .column("order", line -> Quantity.text(line.order()))
        .column("unit", StockLine::unit)
        .amount("packs", StockLine::packs)
        .column("per_pack", line -> Quantity.text(line.pack()))
        .amount("cost", StockLine::orderCost)
        .column("on_hand", line -> Quantity.text(line.month().closing()))
        .column("reorder", line -> text(line.reorder()))
        .column("use_per_week", line -> tenths(line.use().mean()))
        .named("order");
  }

  private static FigureTable suppliers(StockMonth month) {
    return FiguresOf.rows(SupplierOrder.of(month))
        .column("supplier", SupplierOrder::supplier)
        .column("things", order -> Integer.toString(order.lines().size()))
        .amount("cost", SupplierOrder::cost)
        .named("order-suppliers");
  }

  private static FigureTable gas(StockMonth month) {
    Mass mass = Mass.of(month.settings());
    return FiguresOf.rows(month.gas())
        .column("period", GasMonth::period)
        .column("unit", gas -> mass.word())
        .column("bought", gas -> mass.text(gas.boughtKg()))
        .column("forge_minutes", gas -> Quantity.text(gas.burn().totalMinutes()))
        .column("burn_per_hour", gas -> mass.text(gas.burn().kgPerHour()))
        .column("explained", gas -> mass.text(gas.burn().explainedKg()))
        .column("difference", gas -> mass.text(gas.differenceKg()))
        .column(
            "burn_that_explains",
            gas -> gas.burn().rateFor(gas.boughtKg()).map(mass::text).orElse(""))
        .column("basis", gas -> gas.basis().name().toLowerCase(Locale.ROOT))
        .count("purchases_not_counted", gas -> gas.uncounted())
        .named("gas");
  }

  private static FigureTable barNeeds(StockMonth month) {
    List<Needed> needed = new ArrayList<>();
    for (BarPlan bar : month.bars()) {
      bar.needs().forEach(need -> needed.add(new Needed(need, true)));
      bar.tooLong().forEach(need -> needed.add(new Needed(need, false)));
    }
    return FiguresOf.rows(needed)
        .column("bar", line -> line.need().bar().item())
        .column("bar_size", line -> line.need().bar().size())
        .column("shoe", line -> line.need().shoe().item())
        .column("shoe_size", line -> line.need().shoe().size())
        .column("length_mm", line -> Quantity.text(line.need().lengthMm()))
        .column("cut_mm", line -> Quantity.text(line.need().cutMm()))
        .count("count", line -> line.need().count())
        .column("horses", line -> String.join("; ", line.need().horses()))
        .column("fits_the_bar", line -> line.fits() ? "yes" : "no")
        .column("length_in", line -> ShopLength.INCHES.text(line.need().lengthMm()))
        .column("cut_in", line -> ShopLength.INCHES.text(line.need().cutMm()))
        .named("bar-needs");
  }

  /** A length of bar, and whether a bar is long enough for it. */
  private record Needed(BarNeed need, boolean fits) {}

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

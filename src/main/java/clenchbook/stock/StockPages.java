package clenchbook.stock;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Heading;
import clenchbook.reports.blocks.Block.KeyFigure;
import clenchbook.reports.blocks.Block.KeyFigures;
import clenchbook.reports.blocks.Block.Paragraph;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.TableOf;
import clenchbook.stock.ledger.Quantity;
import clenchbook.stock.ledger.ShelfMonth;
import clenchbook.stock.ledger.ShelfMonth.Worth;
import clenchbook.stock.orders.StockLine;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A month's stock as blocks of the report and of the month's page. */
final class StockPages {

  private static final int BARS_IN_PICTURE = 12;

  private StockPages() {}

  static List<Block> inShort(StockMonth month) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, "Stock"));
    blocks.add(keyFigures(month));
    order(month, blocks);
    return blocks;
  }

  static List<Block> full(StockMonth month, List<String> warnings) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, "Stock"));
    blocks.add(keyFigures(month));
    warnings.forEach(warning -> blocks.add(new Paragraph(warning)));
    order(month, blocks);
    weeksLeft(month, blocks);
    counted(month, blocks);
    value(month, blocks);
    shelves(month, blocks);
    gas(month, blocks);
    return blocks;
  }

  private static KeyFigures keyFigures(StockMonth month) {
    Worth worth = month.total(ShelfMonth::average);
    return new KeyFigures(
        List.of(
            money(month, "Stock at the month's end", worth.closing(), Basis.MEASURED),
            money(month, "Cost of what was used", worth.used(), Basis.MEASURED),
            money(month, "Too much or too little by count", worth.difference(), Basis.MEASURED),
            money(month, "To order now", month.orderCost(), Basis.STANDARD)));
  }

  private static KeyFigure money(StockMonth month, String label, BigDecimal amount, Basis basis) {
    String text = month.settings().currency() + " " + amount.toPlainString();
    return new KeyFigure(label, text, Optional.of(basis));
  }

  private static void order(StockMonth month, List<Block> blocks) {
    List<StockLine> orders = month.orders();
    blocks.add(new Heading(2, "What to order"));
    if (orders.isEmpty()) {
      blocks.add(new Paragraph("Nothing that the book keeps stock of is at its reorder point."));
      return;
    }
    blocks.add(
        TableOf.rows(orders)
            .words(
                "Supplier", 14, line -> line.supplier().isEmpty() ? "(not given)" : line.supplier())
            .words("Item", 18, StockPages::name)
            .number("On hand", 8, line -> quantity(line, line.month().closing()))
            .figure(
                "Reorder at", 8, line -> StockTables.text(line.reorder()), StockLine::reorderBasis)
            .number("Order", 8, line -> quantity(line, line.order()))
            .number("Packs", 10, StockPages::packs)
            .figure(
                "Cost (" + month.settings().currency() + ")",
                9,
                line -> line.orderCost().toPlainString(),
                line -> Basis.STANDARD)
            .total("In all", "", "", "", "", "", month.orderCost().toPlainString())
            .plain());
  }

  private static String name(StockLine line) {
    return StockWarnings.name(line.month().shelf());
  }

  private static String packs(StockLine line) {
    return line.packs().toPlainString() + " of " + Quantity.text(line.pack());
  }

  private static String quantity(StockLine line, BigDecimal quantity) {
    String text = Quantity.text(quantity);
    return line.unit().equals("piece") ? text : text + " " + line.unit();
  }

  private static void weeksLeft(StockMonth month, List<Block> blocks) {
    List<StockLine> lines =
        month.lines().stream()
            .filter(line -> StockTables.weeksLeft(line).isPresent())
            .sorted(
                Comparator.comparing((StockLine line) -> StockTables.weeksLeft(line).orElseThrow())
                    .thenComparing(line -> line.month().shelf()))
            .limit(BARS_IN_PICTURE)
            .toList();
    if (lines.size() < 2) {
      return;
    }
    List<String> names =
        lines.stream().map(line -> StockWarnings.name(line.month().shelf())).toList();
    List<Double> weeks =
        lines.stream()
            .map(
                line ->
                    Double.valueOf(StockTables.tenths(StockTables.weeksLeft(line).orElseThrow())))
            .toList();
    String words = inWords(names.get(0), StockTables.weeksLeft(lines.get(0)).orElseThrow());
    Chart chart =
        new Chart.Columns(
            "Item",
            "Weeks left",
            names,
            List.of(new Chart.Series("Weeks left", weeks)),
            false,
            true,
            List.of());
    blocks.add(new Block.Picture("How long stock will last", words, chart));
  }

  private static String inWords(String first, BigDecimal weeks) {
    return weeks.signum() == 0
        ? first + " has run out."
        : "First to run out: " + first + ", in " + StockTables.tenths(weeks) + " weeks.";
  }

  private static void counted(StockMonth month, List<Block> blocks) {
    List<StockLine> lines =
        month.lines().stream().filter(line -> line.month().counted().isPresent()).toList();
    if (lines.isEmpty()) {
      return;
    }
    BigDecimal total =
        lines.stream()
            .map(StockPages::worthOfDifference)
            .reduce(month.settings().minorUnit().zero(), BigDecimal::add);
    blocks.add(new Heading(2, "Counted against expected"));
    blocks.add(
        TableOf.rows(lines)
            .words("Item", 20, StockPages::name)
            .words(
                "Counted on",
                10,
                line -> line.month().countedOn().map(LocalDate::toString).orElse(""))
            .number("Expected", 9, line -> quantity(line, line.month().expected()))
            .number(
                "Counted",
                9,
                line -> quantity(line, line.month().counted().orElse(BigDecimal.ZERO)))
            .number("Difference", 9, line -> StockTables.text(line.month().difference()))
            .amount("Worth (" + month.settings().currency() + ")", 9, StockPages::worthOfDifference)
            .total("In all", "", "", "", "", total.toPlainString())
            .plain());
    blocks.add(
        new Paragraph(
            "Expected is as at the count. Worth adds up all counts of the month at the average"
                + " cost; stock that the book saw for the first time by counting it is taken on,"
                + " and is no difference in money. What wears out without being written in a visit,"
                + " such as rasps and knives, shows as missing here: that is its use, not a"
                + " loss."));
  }

  private static BigDecimal worthOfDifference(StockLine line) {
    return line.month().average().difference();
  }

  private static void value(StockMonth month, List<Block> blocks) {
    blocks.add(new Heading(2, "What stock cost"));
    blocks.add(
        TableOf.rows(
                List.of(
                    new Method("Moving average", month.total(ShelfMonth::average)),
                    new Method("First in, first out", month.total(ShelfMonth::fifo))))
            .words("Method", 16, Method::name)
            .amount("Opening", 9, method -> method.worth().opening())
            .amount("Bought", 9, method -> method.worth().bought())
            .amount("Taken on", 9, method -> method.worth().takenOn())
            .amount("By count", 9, method -> method.worth().difference())
            .amount("Used", 9, method -> method.worth().used())
            .amount("Closing", 9, method -> method.worth().closing())
            .captioned("In " + month.settings().currency()));
    blocks.add(
        new Paragraph(
            "Used is all that was available less what is left. It counts only what the book knew to"
                + " be there; the jobs' own material costs also bear what was used beyond it, at"
                + " list prices or the last average."));
  }

  /** A way to value stock, and what it makes of the month. */
  private record Method(String name, Worth worth) {}

  private static void shelves(StockMonth month, List<Block> blocks) {
    List<StockLine> moved = month.lines().stream().filter(StockLine::moved).toList();
    blocks.add(new Heading(2, "Shelf by shelf"));
    if (moved.isEmpty()) {
      blocks.add(new Paragraph("Nothing was on the shelf, came or went this month."));
      return;
    }
    blocks.add(
        TableOf.rows(moved)
            .words("Item", 18, StockPages::name)
            .number("Opening", 8, line -> Quantity.text(line.month().opening()))
            .number("Bought", 7, line -> Quantity.text(line.month().bought()))
            .number("Used", 7, line -> Quantity.text(line.month().used()))
            .number("Closing", 9, line -> quantity(line, line.month().closing()))
            .number("A week", 6, line -> StockTables.tenths(line.use().mean()))
            .number("Spread", 6, line -> line.use().spread().map(StockTables::tenths).orElse("–"))
            .number("Interval's use", 8, line -> StockTables.tenths(line.intervalUse()))
            .figureOrDash(
                "Reorder at",
                8,
                line -> line.reorder().map(Quantity::text),
                StockLine::reorderBasis)
            .figureOrDash(
                "Best order",
                7,
                line -> line.economic().map(StockTables::whole),
                line -> Basis.DEFAULT)
            .plain());
    blocks.add(
        new Paragraph(
            "A week and its spread (one standard deviation) are those of the last 26 weeks, or of"
                + " as many as the book holds. Reorder at is your own figure, or the use over Lead"
                + " days and 1.65 spreads, which runs out in about 1 lead time of 20. An order"
                + " brings stock to that point and one shoeing interval's use ("
                + month.intervalDays()
                + " days), in whole packs. Best order is the economic order quantity if an order"
                + " costs a quarter of your hour and keeping stock a quarter of its price a year:"
                + " both assumed, blank without a wage."));
  }

  private static void gas(StockMonth month, List<Block> blocks) {
    List<GasMonth> told = month.gas().stream().filter(GasMonth::told).toList();
    if (told.isEmpty()) {
      return;
    }
    StockTables.Mass mass = StockTables.Mass.of(month.settings());
    blocks.add(new Heading(2, "Gas"));
    blocks.add(
        TableOf.rows(told)
            .words("Period", 12, GasMonth::period)
            .figure("Bought", 8, gas -> mass.text(gas.boughtKg()), GasMonth::basis)
            .number("Forge burned (min)", 10, gas -> Quantity.text(gas.burn().totalMinutes()))
            .number("Explained", 9, gas -> mass.text(gas.burn().explainedKg()))
            .number("Difference", 9, gas -> mass.text(gas.differenceKg()))
            .figure(
                "Burn an hour", 9, gas -> mass.text(gas.burn().kgPerHour()), GasMonth::burnBasis)
            .number(
                "Burn that would explain it",
                12,
                gas -> gas.burn().rateFor(gas.boughtKg()).map(mass::text).orElse("–"))
            .captioned("Gas in " + mass.word()));
    blocks.add(
        new Paragraph(
            "Explained is the forge's minutes at the burn rate in Settings, setting up included."
                + " One month says little, since cylinders are bought whole; twelve months in which"
                + " the difference stays point to another burn rate, a leak, or minutes not"
                + " written down. A smell of gas or a hiss is never a matter of bookkeeping: shut"
                + " the cylinder and have the hose and regulator looked at."));
  }
}

package clenchbook.stock;

import clenchbook.measure.Basis;
import clenchbook.report.Block;
import clenchbook.report.Block.Cell;
import clenchbook.report.Block.Column;
import clenchbook.report.Block.Heading;
import clenchbook.report.Block.KeyFigure;
import clenchbook.report.Block.KeyFigures;
import clenchbook.report.Block.Paragraph;
import clenchbook.report.Block.Row;
import clenchbook.report.Block.Table;
import clenchbook.report.Chart;
import clenchbook.stock.ShelfMonth.Worth;
import java.math.BigDecimal;
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
    List<Row> rows = new ArrayList<>();
    orders.forEach(line -> rows.add(orderRow(line)));
    rows.add(Row.total("In all", "", "", "", "", "", month.orderCost().toPlainString()));
    blocks.add(
        new Table(
            "",
            List.of(
                Column.words("Supplier", 14),
                Column.words("Item", 18),
                Column.number("On hand", 8),
                Column.number("Reorder at", 8),
                Column.number("Order", 8),
                Column.number("Packs", 10),
                Column.number("Cost (" + month.settings().currency() + ")", 9)),
            rows));
  }

  private static Row orderRow(StockLine line) {
    return new Row(
        List.of(
            Cell.of(line.supplier().isEmpty() ? "(not given)" : line.supplier()),
            Cell.of(StockWarnings.name(line.month().shelf())),
            Cell.of(quantity(line, line.month().closing())),
            Cell.of(StockTables.text(line.reorder()), line.reorderBasis()),
            Cell.of(quantity(line, line.order())),
            Cell.of(line.packs().toPlainString() + " of " + Quantity.text(line.pack())),
            Cell.of(line.orderCost().toPlainString(), Basis.STANDARD)),
        false);
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
    List<Row> rows = new ArrayList<>();
    BigDecimal total = month.settings().minorUnit().zero();
    for (StockLine line : lines) {
      ShelfMonth shelf = line.month();
      total = total.add(shelf.average().difference());
      rows.add(
          Row.of(
              StockWarnings.name(shelf.shelf()),
              shelf.countedOn().map(Object::toString).orElse(""),
              quantity(line, shelf.expected()),
              quantity(line, shelf.counted().orElse(BigDecimal.ZERO)),
              StockTables.text(shelf.difference()),
              shelf.average().difference().toPlainString()));
    }
    rows.add(Row.total("In all", "", "", "", "", total.toPlainString()));
    blocks.add(new Heading(2, "Counted against expected"));
    blocks.add(
        new Table(
            "",
            List.of(
                Column.words("Item", 20),
                Column.words("Counted on", 10),
                Column.number("Expected", 9),
                Column.number("Counted", 9),
                Column.number("Difference", 9),
                Column.number("Worth (" + month.settings().currency() + ")", 9)),
            rows));
    blocks.add(
        new Paragraph(
            "Expected is as at the count. Worth adds up all counts of the month at the average"
                + " cost; stock that the book saw for the first time by counting it is taken on,"
                + " and is no difference in money. What wears out without being written in a visit,"
                + " such as rasps and knives, shows as missing here: that is its use, not a"
                + " loss."));
  }

  private static void value(StockMonth month, List<Block> blocks) {
    blocks.add(new Heading(2, "What stock cost"));
    blocks.add(
        new Table(
            "In " + month.settings().currency(),
            List.of(
                Column.words("Method", 16),
                Column.number("Opening", 9),
                Column.number("Bought", 9),
                Column.number("Taken on", 9),
                Column.number("By count", 9),
                Column.number("Used", 9),
                Column.number("Closing", 9)),
            List.of(
                worth("Moving average", month.total(ShelfMonth::average)),
                worth("First in, first out", month.total(ShelfMonth::fifo)))));
    blocks.add(
        new Paragraph(
            "Used is all that was available less what is left. It counts only what the book knew to"
                + " be there; the jobs' own material costs also bear what was used beyond it, at"
                + " list prices or the last average."));
  }

  private static Row worth(String method, Worth worth) {
    return Row.of(
        method,
        worth.opening().toPlainString(),
        worth.bought().toPlainString(),
        worth.takenOn().toPlainString(),
        worth.difference().toPlainString(),
        worth.used().toPlainString(),
        worth.closing().toPlainString());
  }

  private static void shelves(StockMonth month, List<Block> blocks) {
    List<Row> rows =
        month.lines().stream().filter(StockLine::moved).map(StockPages::shelfRow).toList();
    blocks.add(new Heading(2, "Shelf by shelf"));
    if (rows.isEmpty()) {
      blocks.add(new Paragraph("Nothing was on the shelf, came or went this month."));
      return;
    }
    blocks.add(
        new Table(
            "",
            List.of(
                Column.words("Item", 18),
                Column.number("Opening", 8),
                Column.number("Bought", 7),
                Column.number("Used", 7),
                Column.number("Closing", 9),
                Column.number("A week", 6),
                Column.number("Spread", 6),
                Column.number("Interval's use", 8),
                Column.number("Reorder at", 8),
                Column.number("Best order", 7)),
            rows));
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

  private static Row shelfRow(StockLine line) {
    ShelfMonth shelf = line.month();
    return new Row(
        List.of(
            Cell.of(StockWarnings.name(shelf.shelf())),
            Cell.of(Quantity.text(shelf.opening())),
            Cell.of(Quantity.text(shelf.bought())),
            Cell.of(Quantity.text(shelf.used())),
            Cell.of(quantity(line, shelf.closing())),
            Cell.of(StockTables.tenths(line.use().mean())),
            Cell.of(line.use().spread().map(StockTables::tenths).orElse("–")),
            Cell.of(StockTables.tenths(line.intervalUse())),
            line.reorder()
                .map(point -> Cell.of(Quantity.text(point), line.reorderBasis()))
                .orElse(Cell.of("–")),
            line.economic()
                .map(best -> Cell.of(StockTables.whole(best), Basis.DEFAULT))
                .orElse(Cell.of("–"))),
        false);
  }

  private static void gas(StockMonth month, List<Block> blocks) {
    List<GasMonth> told = month.gas().stream().filter(GasMonth::told).toList();
    if (told.isEmpty()) {
      return;
    }
    StockTables.Mass mass = StockTables.Mass.of(month.settings());
    blocks.add(new Heading(2, "Gas"));
    blocks.add(
        new Table(
            "Gas in " + mass.word(),
            List.of(
                Column.words("Period", 12),
                Column.number("Bought", 8),
                Column.number("Forge burned (min)", 10),
                Column.number("Explained", 9),
                Column.number("Difference", 9),
                Column.number("Burn an hour", 9),
                Column.number("Burn that would explain it", 12)),
            told.stream().map(gas -> gasRow(gas, mass)).toList()));
    blocks.add(
        new Paragraph(
            "Explained is the forge's minutes at the burn rate in Settings, setting up included."
                + " One month says little, since cylinders are bought whole; twelve months in which"
                + " the difference stays point to another burn rate, a leak, or minutes not"
                + " written down. A smell of gas or a hiss is never a matter of bookkeeping: shut"
                + " the cylinder and have the hose and regulator looked at."));
  }

  private static Row gasRow(GasMonth gas, StockTables.Mass mass) {
    return new Row(
        List.of(
            Cell.of(gas.period()),
            Cell.of(mass.text(gas.boughtKg()), gas.basis()),
            Cell.of(Quantity.text(gas.burn().totalMinutes())),
            Cell.of(mass.text(gas.burn().explainedKg())),
            Cell.of(mass.text(gas.differenceKg())),
            Cell.of(mass.text(gas.burn().kgPerHour()), gas.burnBasis()),
            Cell.of(gas.burn().rateFor(gas.boughtKg()).map(mass::text).orElse("–"))),
        false);
  }
}

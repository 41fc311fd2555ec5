package clenchbook.stock;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Heading;
import clenchbook.reports.blocks.Block.Paragraph;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.TableOf;
import clenchbook.stock.ledger.Quantity;
import clenchbook.stock.ledger.ShelfMonth;
import clenchbook.stock.ledger.ShelfMonth.Worth;
import clenchbook.stock.orders.StockLine;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** A month's stock as blocks of the report and of the month's page. */
final class StockPages {

  private final StockMonth month;
  private final FigureText text;

  StockPages(StockMonth month, FigureText text) {
    this.month = month;
    this.text = text;
  }

  /** For the month's page: what to order from whom, in one line each. */
  List<Block> inShort() {
    List<SupplierOrder> orders = SupplierOrder.of(month);
    if (orders.isEmpty()) {
      return List.of(new Paragraph(StockAnswer.NOTHING));
    }
    return List.of(
        TableOf.rows(orders)
            .words("Supplier", 16, SupplierOrder::supplierOrNone)
            .figure("Cost", 7, order -> text.money(order.cost()), order -> Basis.STANDARD)
            .words("What", 30, order -> order.itemNames())
            .total("In all", text.money(month.orderCost()), "")
            .plain());
  }

  List<Block> evidence() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, "What to order"));
    List<SupplierOrder> orders = SupplierOrder.of(month);
    if (orders.isEmpty()) {
      blocks.add(new Paragraph(StockAnswer.NOTHING));
    }
    orders.forEach(order -> blocks.add(order(order)));
    if (!orders.isEmpty()) {
      blocks.add(
          new Paragraph(
              "An order brings stock to its reorder point and one shoeing interval's use (%s days),"
                      .formatted(text.count(month.intervalDays()))
                  + " in whole packs. Reorder at is your own figure, or the use over Lead days with"
                  + " room for a busy week."));
    }
    counted(blocks);
    return blocks;
  }

  List<Block> annex() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, "Stock"));
    value(blocks);
    shelves(blocks);
    gas(blocks);
    return blocks;
  }

  private Block order(SupplierOrder order) {
    return TableOf.rows(order.lines())
        .words("Item", 18, StockPages::name)
        .number("On hand", 9, line -> quantity(line, line.month().closing()))
        .figure("Reorder at", 9, line -> StockTables.text(line.reorder()), StockLine::reorderBasis)
        .number("Order", 9, line -> quantity(line, line.order()))
        .words("Packs", 14, this::packs)
        .figure(
            "Cost (" + text.currencySign() + ")",
            9,
            line -> text.amount(line.orderCost()),
            line -> Basis.STANDARD)
        .total("In all", "", "", "", "", text.amount(order.cost()))
        .captioned(order.supplierOrNone());
  }

  private static String name(StockLine line) {
    return StockWarnings.name(line.month().shelf());
  }

  /** Such as {@code 41 packs of 2}; nothing where a pack is one piece. */
  private String packs(StockLine line) {
    if (line.pack().compareTo(BigDecimal.ONE) == 0) {
      return "";
    }
    String packs = text.plain(line.packs());
    String pieces = text.plain(line.pack());
    return (packs.equals("1") ? "1 pack of %2$s" : "%1$s packs of %2$s").formatted(packs, pieces);
  }

  /** From the file's digits, so that who rounds the file gets what people read. */
  private String shown(BigDecimal quantity) {
    return text.plain(new BigDecimal(Quantity.text(quantity)));
  }

  private String quantity(StockLine line, BigDecimal quantity) {
    String number = shown(quantity);
    return line.unit().equals("piece") ? number : number + "\u00A0" + line.unit();
  }

  private void counted(List<Block> blocks) {
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
                "Counted on", 10, line -> line.month().countedOn().map(text::shortDay).orElse(""))
            .number("Expected", 9, line -> quantity(line, line.month().expected()))
            .number(
                "Counted",
                9,
                line -> quantity(line, line.month().counted().orElse(BigDecimal.ZERO)))
            .number("Difference", 9, line -> StockTables.text(line.month().difference()))
            .number(
                "Worth (" + text.currencySign() + ")",
                9,
                line -> text.amount(worthOfDifference(line)))
            .total("In all", "", "", "", "", text.amount(total))
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

  private void value(List<Block> blocks) {
    blocks.add(new Heading(2, "What stock cost"));
    blocks.add(
        TableOf.rows(
                List.of(
                    new Method("Moving average", month.total(ShelfMonth::average)),
                    new Method("First in, first out", month.total(ShelfMonth::fifo))))
            .words("Method", 16, Method::name)
            .number("Opening", 9, method -> text.amount(method.worth().opening()))
            .number("Bought", 9, method -> text.amount(method.worth().bought()))
            .number("Taken on", 9, method -> text.amount(method.worth().takenOn()))
            .number("By count", 9, method -> text.amount(method.worth().difference()))
            .number("Used", 9, method -> text.amount(method.worth().used()))
            .number("Closing", 9, method -> text.amount(method.worth().closing()))
            .captioned("In " + text.currencySign()));
    blocks.add(
        new Paragraph(
            "Used is all that was available less what is left. It counts only what the book knew to"
                + " be there; the jobs' own material costs also bear what was used beyond it, at"
                + " list prices or the last average."));
  }

  /** A way to value stock, and what it makes of the month. */
  private record Method(String name, Worth worth) {}

  private void shelves(List<Block> blocks) {
    List<StockLine> moved = month.lines().stream().filter(StockLine::moved).toList();
    blocks.add(new Heading(2, "Shelf by shelf"));
    if (moved.isEmpty()) {
      blocks.add(new Paragraph("Nothing was on the shelf, came or went this month."));
      return;
    }
    blocks.add(
        TableOf.rows(moved)
            .words("Item", 18, StockPages::name)
            .number("Opening", 8, line -> shown(line.month().opening()))
            .number("Bought", 7, line -> shown(line.month().bought()))
            .number("Used", 7, line -> shown(line.month().used()))
            .number("Closing", 9, line -> quantity(line, line.month().closing()))
            .number("A week", 6, line -> StockTables.tenths(line.use().mean()))
            .number("Spread", 6, line -> line.use().spread().map(StockTables::tenths).orElse("–"))
            .number("Interval's use", 8, line -> StockTables.tenths(line.intervalUse()))
            .figureOrDash(
                "Reorder at", 8, line -> line.reorder().map(this::shown), StockLine::reorderBasis)
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

  private void gas(List<Block> blocks) {
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
            .number("Forge burned", 10, gas -> text.minutes(gas.burn().totalMinutes()))
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

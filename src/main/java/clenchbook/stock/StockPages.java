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
  /** A blank at which no line breaks. */
  private static final char BOUND = '\u00A0';

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
      return List.of(new Paragraph(text.say("stock.nothing")));
    }
    return List.of(
        TableOf.rows(orders)
            .words(text.say("stock.column.supplier"), 16, order -> order.supplierOrNone(text))
            .figure(
                text.say("stock.column.cost"),
                7,
                order -> text.money(order.cost()),
                order -> Basis.STANDARD)
            .words(text.say("stock.column.what"), 30, order -> order.itemNames())
            .total(text.say("stock.inAll"), text.money(month.orderCost()), "")
            .plain());
  }

  List<Block> evidence() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, text.say("stock.order")));
    List<SupplierOrder> orders = SupplierOrder.of(month);
    if (orders.isEmpty()) {
      blocks.add(new Paragraph(text.say("stock.nothing")));
    }
    orders.forEach(order -> blocks.add(order(order)));
    if (!orders.isEmpty()) {
      blocks.add(new Paragraph(text.say("stock.order.how", month.intervalDays())));
    }
    counted(blocks);
    return blocks;
  }

  List<Block> annex() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, text.say("stock.shelves.title")));
    value(blocks);
    shelves(blocks);
    gas(blocks);
    return blocks;
  }

  private Block order(SupplierOrder order) {
    return TableOf.rows(order.lines())
        .words(text.say("stock.column.item"), 18, StockPages::name)
        .number(text.say("stock.column.onHand"), 9, line -> quantity(line, line.month().closing()))
        .figure(
            text.say("stock.column.reorderAt"),
            9,
            line -> line.reorder().map(this::shown).orElse(""),
            StockLine::reorderBasis)
        .number(text.say("stock.column.order"), 9, line -> quantity(line, line.order()))
        .words(text.say("stock.column.packs"), 14, this::packs)
        .figure(
            text.say("stock.column.costIn", text.currencySign()),
            9,
            line -> text.amount(line.orderCost()),
            line -> Basis.STANDARD)
        .total(text.say("stock.inAll"), "", "", "", "", text.amount(order.cost()))
        .captioned(order.supplierOrNone(text));
  }

  private static String name(StockLine line) {
    return StockWarnings.name(line.month().shelf());
  }

  /** Such as {@code 41 packs of 2}; nothing where a pack is one piece. */
  private String packs(StockLine line) {
    if (line.pack().compareTo(BigDecimal.ONE) == 0) {
      return "";
    }
    return text.say("stock.packs", line.packs().intValueExact(), text.plain(line.pack()));
  }

  /** From the file's digits, so that who rounds the file gets what people read. */
  private String shown(BigDecimal quantity) {
    return text.plain(new BigDecimal(Quantity.text(quantity)));
  }

  private String quantity(StockLine line, BigDecimal quantity) {
    String number = shown(quantity);
    return switch (line.unit()) {
      case "piece" -> number;
      case "bar" -> text.say("stock.unit.bar", number).replace(' ', BOUND);
      default -> number + BOUND + line.unit();
    };
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
    blocks.add(new Heading(2, text.say("stock.counted")));
    blocks.add(
        TableOf.rows(lines)
            .words(text.say("stock.column.item"), 20, StockPages::name)
            .words(
                text.say("stock.column.countedOn"),
                10,
                line -> line.month().countedOn().map(text::shortDay).orElse(""))
            .number(
                text.say("stock.column.expected"),
                9,
                line -> quantity(line, line.month().expected()))
            .number(
                text.say("stock.column.counted"),
                9,
                line -> quantity(line, line.month().counted().orElse(BigDecimal.ZERO)))
            .number(
                text.say("stock.column.difference"),
                9,
                line -> line.month().difference().map(this::shown).orElse(""))
            .number(
                text.say("stock.column.worthIn", text.currencySign()),
                9,
                line -> text.amount(worthOfDifference(line)))
            .total(text.say("stock.inAll"), "", "", "", "", text.amount(total))
            .plain());
    blocks.add(new Paragraph(text.say("stock.counted.how")));
  }

  private static BigDecimal worthOfDifference(StockLine line) {
    return line.month().average().difference();
  }

  private void value(List<Block> blocks) {
    blocks.add(new Heading(2, text.say("stock.value")));
    blocks.add(
        TableOf.rows(
                List.of(
                    new Method(text.say("stock.value.average"), month.total(ShelfMonth::average)),
                    new Method(text.say("stock.value.fifo"), month.total(ShelfMonth::fifo))))
            .words(text.say("stock.column.method"), 16, Method::name)
            .number(
                text.say("stock.column.opening"),
                9,
                method -> text.amount(method.worth().opening()))
            .number(
                text.say("stock.column.bought"), 9, method -> text.amount(method.worth().bought()))
            .number(
                text.say("stock.column.takenOn"),
                9,
                method -> text.amount(method.worth().takenOn()))
            .number(
                text.say("stock.column.byCount"),
                9,
                method -> text.amount(method.worth().difference()))
            .number(text.say("stock.column.used"), 9, method -> text.amount(method.worth().used()))
            .number(
                text.say("stock.column.closing"),
                9,
                method -> text.amount(method.worth().closing()))
            .captioned(text.say("stock.value.currency", text.currencySign())));
    blocks.add(new Paragraph(text.say("stock.value.how")));
  }

  /** A way to value stock, and what it makes of the month. */
  private record Method(String name, Worth worth) {}

  private void shelves(List<Block> blocks) {
    List<StockLine> moved = month.lines().stream().filter(StockLine::moved).toList();
    blocks.add(new Heading(2, text.say("stock.shelves")));
    if (moved.isEmpty()) {
      blocks.add(new Paragraph(text.say("stock.shelves.none")));
      return;
    }
    blocks.add(
        TableOf.rows(moved)
            .words(text.say("stock.column.item"), 18, StockPages::name)
            .number(text.say("stock.column.opening"), 8, line -> shown(line.month().opening()))
            .number(text.say("stock.column.bought"), 7, line -> shown(line.month().bought()))
            .number(text.say("stock.column.used"), 7, line -> shown(line.month().used()))
            .number(
                text.say("stock.column.closing"), 9, line -> quantity(line, line.month().closing()))
            .number(text.say("stock.column.aWeek"), 6, line -> text.number(line.use().mean(), 1))
            .number(
                text.say("stock.column.spread"),
                6,
                line -> line.use().spread().map(spread -> text.number(spread, 1)).orElse("–"))
            .number(
                text.say("stock.column.intervalUse"), 8, line -> text.number(line.intervalUse(), 1))
            .figureOrDash(
                text.say("stock.column.reorderAt"),
                8,
                line -> line.reorder().map(this::shown),
                StockLine::reorderBasis)
            .figureOrDash(
                text.say("stock.column.bestOrder"),
                7,
                line -> line.economic().map(best -> text.number(best, 0)),
                line -> Basis.DEFAULT)
            .plain());
    blocks.add(new Paragraph(text.say("stock.shelves.how", month.intervalDays())));
  }

  private void gas(List<Block> blocks) {
    List<GasMonth> told = month.gas().stream().filter(GasMonth::told).toList();
    if (told.isEmpty()) {
      return;
    }
    StockTables.Mass mass = StockTables.Mass.of(month.settings());
    blocks.add(new Heading(2, text.say("stock.gas")));
    blocks.add(
        TableOf.rows(told)
            .words(text.say("stock.column.period"), 12, gas -> text.say(gas.name()))
            .figure(
                text.say("stock.column.bought"),
                8,
                gas -> mass(mass, gas.boughtKg()),
                GasMonth::basis)
            .number(
                text.say("stock.column.burned"), 10, gas -> text.minutes(gas.burn().totalMinutes()))
            .number(
                text.say("stock.column.explained"), 9, gas -> mass(mass, gas.burn().explainedKg()))
            .number(text.say("stock.column.difference"), 9, gas -> mass(mass, gas.differenceKg()))
            .figure(
                text.say("stock.column.burnAnHour"),
                9,
                gas -> mass(mass, gas.burn().kgPerHour()),
                GasMonth::burnBasis)
            .number(
                text.say("stock.column.burnThatExplains"),
                12,
                gas -> gas.burn().rateFor(gas.boughtKg()).map(kg -> mass(mass, kg)).orElse("–"))
            .captioned(text.say("stock.gas.unit", mass.word())));
    blocks.add(new Paragraph(text.say("stock.gas.how")));
  }

  private String mass(StockTables.Mass mass, BigDecimal kg) {
    return text.number(new BigDecimal(mass.text(kg)), 2);
  }
}

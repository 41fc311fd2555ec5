package clenchbook.stock;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.FirstPage;
import clenchbook.stock.orders.StockLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The first page of the stock: what to order now, and what runs out first. */
final class StockAnswer {
  private static final int BARS = 12;

  private final StockMonth month;
  private final FigureText text;
  private final List<StockLine> shortest;

  StockAnswer(StockMonth month, FigureText text) {
    this.month = month;
    this.text = text;
    this.shortest =
        month.lines().stream()
            .filter(line -> StockTables.weeksLeft(line).isPresent())
            .sorted(
                Comparator.comparing((StockLine line) -> StockTables.weeksLeft(line).orElseThrow())
                    .thenComparing(line -> line.month().shelf()))
            .limit(BARS)
            .toList();
  }

  FirstPage page(List<String> warnings) {
    List<String> things = new ArrayList<>();
    SupplierOrder.of(month).forEach(order -> things.add(thing(order)));
    things.addAll(warnings);
    return FirstPage.of(sentence(), picture(), things);
  }

  private String sentence() {
    int items = month.orders().size();
    String cost = text.about(month.orderCost());
    if (shortest.isEmpty()) {
      return items == 0 ? text.say("stock.nothing") : text.say("stock.answer.order", items, cost);
    }
    BigDecimal weeks = StockTables.weeksLeft(shortest.get(0)).orElseThrow();
    String first = StockWarnings.name(shortest.get(0).month().shelf());
    if (weeks.signum() == 0) {
      return items == 0
          ? text.say("stock.answer.runOut", first)
          : text.say("stock.answer.orderRunOut", items, cost, first);
    }
    String left = text.number(weeks, 1);
    return items == 0
        ? text.say("stock.answer.lasts", first, left)
        : text.say("stock.answer.orderLasts", items, cost, first, left);
  }

  private String thing(SupplierOrder order) {
    int items = order.lines().size();
    String supplier = order.supplierOrNone(text);
    String cost = text.about(order.cost());
    return items == 1
        ? text.say("stock.answer.thing", supplier, cost, order.itemNames())
        : text.say("stock.answer.things", items, supplier, cost, order.itemNames());
  }

  private Optional<Block.Picture> picture() {
    if (shortest.size() < 2) {
      return Optional.empty();
    }
    List<BigDecimal> weeks =
        shortest.stream().map(line -> StockTables.weeksLeft(line).orElseThrow()).toList();
    return Optional.of(
        new Block.Picture(
            text.say("stock.answer.picture"),
            text.say(
                "stock.answer.shortest",
                StockWarnings.name(shortest.get(0).month().shelf()),
                text.number(weeks.get(0), 1)),
            new Chart.Columns(
                "",
                "",
                shortest.stream().map(line -> StockWarnings.name(line.month().shelf())).toList(),
                List.of(
                    new Chart.Series(
                        text.say("stock.answer.weeks"),
                        weeks.stream().map(BigDecimal::doubleValue).toList(),
                        weeks.stream().map(each -> text.number(each, 1)).toList())),
                false,
                true,
                List.of())));
  }
}

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
  static final String NOTHING = "Nothing that the book keeps stock of is at its reorder point.";

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
    String order =
        (items == 1 ? "Order one thing now, for %2$s" : "Order %1$s things now, for %2$s")
            .formatted(text.count(items), text.about(month.orderCost()));
    if (shortest.isEmpty()) {
      return items == 0 ? NOTHING : order + ".";
    }
    BigDecimal weeks = StockTables.weeksLeft(shortest.get(0)).orElseThrow();
    String first = StockWarnings.name(shortest.get(0).month().shelf());
    String end = weeks.signum() == 0 ? "%s has run out." : "%s runs out first, in %s weeks.";
    return (items == 0 ? "Order nothing now; " : order + "; ")
        + end.formatted(first, text.number(weeks, 1));
  }

  private String thing(SupplierOrder order) {
    int items = order.lines().size();
    return (items == 1
            ? "Order from %1$s for %3$s: %4$s."
            : "Order %2$s things from %1$s for %3$s: %4$s.")
        .formatted(
            order.supplierOrNone(), text.count(items), text.about(order.cost()), order.itemNames());
  }

  private Optional<Block.Picture> picture() {
    if (shortest.size() < 2) {
      return Optional.empty();
    }
    List<BigDecimal> weeks =
        shortest.stream().map(line -> StockTables.weeksLeft(line).orElseThrow()).toList();
    return Optional.of(
        new Block.Picture(
            "Weeks until it runs out, at the usual use",
            "%s lasts shortest, %s weeks."
                .formatted(
                    StockWarnings.name(shortest.get(0).month().shelf()),
                    text.number(weeks.get(0), 1)),
            new Chart.Columns(
                "",
                "",
                shortest.stream().map(line -> StockWarnings.name(line.month().shelf())).toList(),
                List.of(
                    new Chart.Series(
                        "weeks",
                        weeks.stream().map(BigDecimal::doubleValue).toList(),
                        weeks.stream().map(each -> text.number(each, 1)).toList())),
                false,
                true,
                List.of())));
  }
}

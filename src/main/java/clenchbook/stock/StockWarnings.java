package clenchbook.stock;

import clenchbook.jobs.StockKey;
import clenchbook.reports.blocks.FigureText;
import clenchbook.stock.bar.BarNeed;
import clenchbook.stock.bar.BarPlan;
import clenchbook.stock.ledger.Quantity;
import clenchbook.stock.ledger.ShelfMonth;
import clenchbook.stock.orders.StockLine;
import java.util.ArrayList;
import java.util.List;

/** What the farrier should look at in a month's stock, in plain sentences. */
final class StockWarnings {

  private StockWarnings() {}

  static List<String> of(StockMonth month, FigureText text) {
    List<String> warnings = new ArrayList<>();
    for (StockLine line : month.lines()) {
      beyond(line, text, warnings);
    }
    for (GasMonth gas : month.gas()) {
      if (gas.uncounted() > 0) {
        warnings.add(text.say("stock.warn.gas", gas.name(), gas.uncounted()));
      }
    }
    for (BarPlan bar : month.bars()) {
      bar(bar, text, warnings);
    }
    return List.copyOf(warnings);
  }

  private static void bar(BarPlan bar, FigureText text, List<String> warnings) {
    String item = bar.bar().item();
    for (BarNeed need : bar.tooLong()) {
      warnings.add(
          text.say(
              "stock.warn.tooLong",
              name(need.shoe()),
              text.asTyped(Quantity.text(need.lengthMm())),
              item));
    }
    if (bar.bar().barLengthMm().isEmpty()) {
      warnings.add(text.say("stock.warn.noLength", item));
    }
  }

  /** Only where the book keeps stock of the item at all; else every use would be beyond it. */
  private static void beyond(StockLine line, FigureText text, List<String> warnings) {
    ShelfMonth month = line.month();
    if (month.priced() && month.beyond().signum() > 0) {
      warnings.add(
          text.say(
              "stock.warn.beyond",
              name(month.shelf()),
              text.asTyped(Quantity.text(month.beyond()))));
    }
  }

  static String name(StockKey shelf) {
    return shelf.size().isEmpty() ? shelf.item() : shelf.item() + " " + shelf.size();
  }
}

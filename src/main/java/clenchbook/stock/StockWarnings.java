package clenchbook.stock;

import clenchbook.jobs.StockKey;
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

  static List<String> of(StockMonth month) {
    List<String> warnings = new ArrayList<>();
    for (StockLine line : month.lines()) {
      beyond(line, warnings);
    }
    for (GasMonth gas : month.gas()) {
      if (gas.uncounted() > 0) {
        warnings.add(
            "Gas, "
                + gas.period()
                + ": "
                + gas.uncounted()
                + " purchases could not be turned into weight; give a gas cost in Settings or buy"
                + " it as an item by the kg.");
      }
    }
    for (BarPlan bar : month.bars()) {
      for (BarNeed need : bar.tooLong()) {
        warnings.add(
            name(need.shoe())
                + " needs "
                + Quantity.text(need.lengthMm())
                + " mm, longer than a bar of "
                + bar.bar().item()
                + ".");
      }
      if (bar.bar().barLengthMm().isEmpty()) {
        warnings.add(
            bar.bar().item() + " has no Bar length in Materials, so no cutting plan can be made.");
      }
    }
    return List.copyOf(warnings);
  }

  /** Only where the book keeps stock of the item at all; else every use would be beyond it. */
  private static void beyond(StockLine line, List<String> warnings) {
    ShelfMonth month = line.month();
    if (month.priced() && month.beyond().signum() > 0) {
      warnings.add(
          name(month.shelf())
              + ": "
              + Quantity.text(month.beyond())
              + " more were used than the book knew to be there; a purchase or a count is"
              + " missing.");
    }
  }

  static String name(StockKey shelf) {
    return shelf.size().isEmpty() ? shelf.item() : shelf.item() + " " + shelf.size();
  }
}

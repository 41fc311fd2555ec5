package clenchbook.stock.bar;

import clenchbook.stock.cutting.CuttingPlan;
import clenchbook.stock.cutting.CuttingPlan.Pattern;
import clenchbook.stock.ledger.Quantity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** A cutting plan in words and rows. */
public final class BarCuts {

  public static final List<String> COLUMNS =
      List.of(
          "bar",
          "bar_size",
          "bar_length_mm",
          "pattern",
          "bars",
          "cuts",
          "offcut_mm",
          "bars_in_all",
          "at_least",
          "proved",
          "lengths",
          "waste_mm",
          "waste_mm_per_shoe",
          "waste_cost_per_shoe",
          "bar_length_in",
          "cuts_in",
          "offcut_in",
          "waste_in",
          "waste_in_per_shoe");

  private BarCuts() {}

  /** Adds one row a pattern. */
  public static void rows(BarPlan bar, CuttingPlan plan, List<List<String>> rows) {
    int number = 1;
    for (Pattern pattern : plan.patterns()) {
      rows.add(
          List.of(
              bar.bar().item(),
              bar.bar().size(),
              Quantity.text(bar.mm(plan.order().barLength())),
              Integer.toString(number),
              Integer.toString(pattern.bars()),
              cuts(bar, plan, pattern, ShopLength.MM),
              Quantity.text(bar.mm(pattern.offcut())),
              Integer.toString(plan.bars()),
              Integer.toString(plan.atLeast()),
              plan.optimal() ? "yes" : "no",
              Integer.toString(bar.shoes()),
              Quantity.text(bar.mm(plan.waste())),
              Quantity.text(bar.wasteMmPerShoe()),
              bar.wasteCostPerShoe().map(BarCuts::cost).orElse(""),
              ShopLength.INCHES.text(bar.mm(plan.order().barLength())),
              cuts(bar, plan, pattern, ShopLength.INCHES),
              ShopLength.INCHES.text(bar.mm(pattern.offcut())),
              ShopLength.INCHES.text(bar.mm(plan.waste())),
              ShopLength.INCHES.text(bar.wasteMmPerShoe())));
      number++;
    }
  }

  /** Gives the lengths of one bar, longest first: {@code 3 x 330; 2 x 290}. */
  public static String cuts(BarPlan bar, CuttingPlan plan, Pattern pattern, ShopLength unit) {
    List<String> cuts = new ArrayList<>();
    for (int i = 0; i < pattern.counts().size(); i++) {
      if (pattern.counts().get(i) > 0) {
        String length = unit.text(bar.mm(plan.order().pieces().get(i).length()));
        cuts.add(pattern.counts().get(i) + " × " + length);
      }
    }
    return String.join("; ", cuts);
  }

  /** Gives a small cost at four decimals, half-up. */
  public static String cost(BigDecimal exact) {
    return exact.setScale(4, RoundingMode.HALF_UP).toPlainString();
  }

  /** Gives how sure the plan is, in words. */
  public static String proof(CuttingPlan plan) {
    return plan.optimal()
        ? "No plan needs fewer bars: proved."
        : "At least "
            + plan.atLeast()
            + " bars are needed; a better plan might still save "
            + plan.gap()
            + ".";
  }
}

package clenchbook.stock.bar;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.stock.cutting.CuttingPlan;
import clenchbook.stock.cutting.CuttingPlan.Pattern;
import clenchbook.stock.ledger.Quantity;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** A cutting plan in words and rows. */
public final class BarCuts {

  private BarCuts() {}

  /** Gives the file of all plans, one row a pattern. */
  public static FigureTable table(List<BarPlan> bars) {
    List<Cutting> cuttings = new ArrayList<>();
    for (BarPlan bar : bars) {
      bar.plan().ifPresent(plan -> add(bar, plan, cuttings));
    }
    return FiguresOf.rows(cuttings)
        .column("bar", cutting -> cutting.bar().bar().item())
        .column("bar_size", cutting -> cutting.bar().bar().size())
        .column("bar_length_mm", cutting -> Quantity.text(cutting.barLength()))
        .count("pattern", Cutting::number)
        .count("bars", cutting -> cutting.pattern().bars())
        .column("cuts", cutting -> cutting.cuts(ShopLength.MM))
        .column("offcut_mm", cutting -> Quantity.text(cutting.offcut()))
        .count("bars_in_all", cutting -> cutting.plan().bars())
        .count("at_least", cutting -> cutting.plan().atLeast())
        .column("proved", cutting -> cutting.plan().optimal() ? "yes" : "no")
        .count("lengths", cutting -> cutting.bar().shoes())
        .column("waste_mm", cutting -> Quantity.text(cutting.waste()))
        .column("waste_mm_per_shoe", cutting -> Quantity.text(cutting.bar().wasteMmPerShoe()))
        .column(
            "waste_cost_per_shoe",
            cutting -> cutting.bar().wasteCostPerShoe().map(BarCuts::cost).orElse(""))
        .column("bar_length_in", cutting -> ShopLength.INCHES.text(cutting.barLength()))
        .column("cuts_in", cutting -> cutting.cuts(ShopLength.INCHES))
        .column("offcut_in", cutting -> ShopLength.INCHES.text(cutting.offcut()))
        .column("waste_in", cutting -> ShopLength.INCHES.text(cutting.waste()))
        .column(
            "waste_in_per_shoe", cutting -> ShopLength.INCHES.text(cutting.bar().wasteMmPerShoe()))
        .named("cutting-plan");
  }

  private static void add(BarPlan bar, CuttingPlan plan, List<Cutting> cuttings) {
    for (int index = 0; index < plan.patterns().size(); index++) {
      cuttings.add(new Cutting(bar, plan, plan.patterns().get(index), index + 1));
    }
  }

  /** One way to cut a bar, numbered within its plan; lengths in millimetres. */
  private record Cutting(BarPlan bar, CuttingPlan plan, Pattern pattern, int number) {
    BigDecimal barLength() {
      return bar.mm(plan.order().barLength());
    }

    BigDecimal offcut() {
      return bar.mm(pattern.offcut());
    }

    BigDecimal waste() {
      return bar.mm(plan.waste());
    }

    String cuts(ShopLength unit) {
      return BarCuts.cuts(bar, plan, pattern, unit);
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
  public static Message proof(CuttingPlan plan) {
    return plan.optimal()
        ? Message.of("stock.bar.proved")
        : Message.of("stock.bar.unproved", plan.atLeast(), plan.gap());
  }
}

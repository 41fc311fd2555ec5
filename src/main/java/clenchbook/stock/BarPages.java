package clenchbook.stock;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Cell;
import clenchbook.reports.blocks.Block.Column;
import clenchbook.reports.blocks.Block.Heading;
import clenchbook.reports.blocks.Block.Paragraph;
import clenchbook.reports.blocks.Block.Row;
import clenchbook.reports.blocks.Block.Table;
import clenchbook.reports.blocks.FigureText;
import clenchbook.stock.bar.BarCuts;
import clenchbook.stock.bar.BarNeed;
import clenchbook.stock.bar.BarPlan;
import clenchbook.stock.bar.ShopLength;
import clenchbook.stock.cutting.CuttingPlan;
import clenchbook.stock.cutting.CuttingPlan.Pattern;
import clenchbook.values.Basis;
import java.util.ArrayList;
import java.util.List;

/** The bar that the next month's handmade shoes need, and how to cut it. */
final class BarPages {

  private BarPages() {}

  static List<Block> of(StockMonth month, FigureText text) {
    if (month.bars().isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, "Bar"));
    blocks.add(
        new Paragraph(
            "Handmade shoes for the horses due by "
                + text.day(month.nextEnd())
                + ", by the Work each usually has and the new shoes of its last such visit."));
    for (BarPlan bar : month.bars()) {
      blocks.add(new Heading(2, bar.bar().item()));
      blocks.add(needs(bar, ShopLength.of(month.settings())));
      bar.plan().ifPresent(plan -> plan(month, bar, plan, blocks));
      if (bar.plan().isEmpty() && bar.bar().barLengthMm().isPresent()) {
        blocks.add(
            new Paragraph(
                "Fewer than ten lengths: cut the longest first, each from the shortest"
                    + " piece of bar that gives it."));
      }
    }
    return blocks;
  }

  private static Table needs(BarPlan bar, ShopLength unit) {
    List<Row> rows = new ArrayList<>();
    for (BarNeed need : bar.needs()) {
      rows.add(
          Row.of(
              StockWarnings.name(need.shoe()),
              unit.text(need.lengthMm()),
              unit.text(need.cutMm()),
              Integer.toString(need.count()),
              String.join(", ", need.horses())));
    }
    return new Table(
        "Lengths needed",
        List.of(
            Column.words("Shoe", 14),
            Column.number(unit.heading("Length"), 8),
            Column.number(unit.heading("Cut"), 7),
            Column.number("How many", 7),
            Column.words("For", 28)),
        rows);
  }

  private static void plan(StockMonth month, BarPlan bar, CuttingPlan plan, List<Block> blocks) {
    ShopLength unit = ShopLength.of(month.settings());
    List<Row> rows = new ArrayList<>();
    for (Pattern pattern : plan.patterns()) {
      rows.add(
          Row.of(
              Integer.toString(pattern.bars()),
              BarCuts.cuts(bar, plan, pattern, unit),
              unit.text(bar.mm(pattern.offcut()))));
    }
    blocks.add(
        new Table(
            "Cutting plan: "
                + plan.bars()
                + " bars of "
                + unit.text(bar.mm(plan.order().barLength()))
                + " "
                + unit.word(),
            List.of(
                Column.number("Bars", 6),
                Column.words(unit.heading("Cut each into"), 34),
                Column.number(unit.heading("Offcut"), 10)),
            rows));
    blocks.add(waste(month, bar, plan));
    blocks.add(new Paragraph(BarCuts.proof(plan) + " " + KERF));
  }

  private static final String KERF =
      "Between two shoes the cut takes its Cut; the last shoe of a bar needs a cut only where"
          + " something is left behind it. Waste counts every offcut as lost; one that is used"
          + " again costs less.";

  private static Table waste(StockMonth month, BarPlan bar, CuttingPlan plan) {
    ShopLength unit = ShopLength.of(month.settings());
    return new Table(
        "Waste",
        List.of(
            Column.number("Shoes", 8),
            Column.number(unit.heading("Cuts and offcuts"), 14),
            Column.number(unit.heading("A shoe"), 10),
            Column.number("A shoe (" + FigureText.of(month.settings()).currencySign() + ")", 12)),
        List.of(
            new Row(
                List.of(
                    Cell.of(Integer.toString(bar.shoes())),
                    Cell.of(unit.text(bar.mm(plan.waste()))),
                    Cell.of(unit.text(bar.wasteMmPerShoe())),
                    bar.wasteCostPerShoe()
                        .map(cost -> Cell.of(BarCuts.cost(cost), Basis.STANDARD))
                        .orElse(Cell.of("–"))),
                false)));
  }
}

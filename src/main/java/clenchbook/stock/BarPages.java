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
    blocks.add(new Heading(1, text.say("stock.bar")));
    blocks.add(new Paragraph(text.say("stock.bar.until", text.day(month.nextEnd()))));
    for (BarPlan bar : month.bars()) {
      blocks.add(new Heading(2, bar.bar().item()));
      blocks.add(needs(bar, ShopLength.of(month.settings()), text));
      bar.plan().ifPresent(plan -> plan(month, bar, plan, text, blocks));
      if (bar.plan().isEmpty() && bar.bar().barLengthMm().isPresent()) {
        blocks.add(new Paragraph(text.say("stock.bar.few")));
      }
    }
    return blocks;
  }

  private static Table needs(BarPlan bar, ShopLength unit, FigureText text) {
    List<Row> rows = new ArrayList<>();
    for (BarNeed need : bar.needs()) {
      rows.add(
          Row.of(
              StockWarnings.name(need.shoe()),
              text.asTyped(unit.text(need.lengthMm())),
              text.asTyped(unit.text(need.cutMm())),
              Integer.toString(need.count()),
              String.join(", ", need.horses())));
    }
    return new Table(
        text.say("stock.bar.needs"),
        List.of(
            Column.words(text.say("stock.column.shoe"), 14),
            Column.number(text.say("stock.column.length", unit.said()), 8),
            Column.number(text.say("stock.column.cut", unit.said()), 7),
            Column.number(text.say("stock.column.howMany"), 7),
            Column.words(text.say("stock.column.horses"), 28)),
        rows);
  }

  private static void plan(
      StockMonth month, BarPlan bar, CuttingPlan plan, FigureText text, List<Block> blocks) {
    ShopLength unit = ShopLength.of(month.settings());
    List<Row> rows = new ArrayList<>();
    for (Pattern pattern : plan.patterns()) {
      rows.add(
          Row.of(
              Integer.toString(pattern.bars()),
              text.asTyped(BarCuts.cuts(bar, plan, pattern, unit)),
              text.asTyped(unit.text(bar.mm(pattern.offcut())))));
    }
    blocks.add(
        new Table(
            text.say(
                "stock.bar.plan",
                plan.bars(),
                text.asTyped(unit.text(bar.mm(plan.order().barLength()))),
                unit.said()),
            List.of(
                Column.number(text.say("stock.column.bars"), 6),
                Column.words(text.say("stock.column.cutInto", unit.said()), 34),
                Column.number(text.say("stock.column.offcut", unit.said()), 10)),
            rows));
    blocks.add(waste(month, bar, plan, text));
    blocks.add(new Paragraph(text.say(BarCuts.proof(plan)) + " " + text.say("stock.bar.kerf")));
  }

  private static Table waste(StockMonth month, BarPlan bar, CuttingPlan plan, FigureText text) {
    ShopLength unit = ShopLength.of(month.settings());
    return new Table(
        text.say("stock.bar.waste"),
        List.of(
            Column.number(text.say("stock.column.shoes"), 8),
            Column.number(text.say("stock.column.cutsAndOffcuts", unit.said()), 14),
            Column.number(text.say("stock.column.aShoe", unit.said()), 10),
            Column.number(text.say("stock.column.aShoe", text.currencySign()), 12)),
        List.of(
            new Row(
                List.of(
                    Cell.of(Integer.toString(bar.shoes())),
                    Cell.of(text.asTyped(unit.text(bar.mm(plan.waste())))),
                    Cell.of(text.asTyped(unit.text(bar.wasteMmPerShoe()))),
                    bar.wasteCostPerShoe()
                        .map(cost -> Cell.of(text.asTyped(BarCuts.cost(cost)), Basis.STANDARD))
                        .orElse(Cell.of("–"))),
                false)));
  }
}

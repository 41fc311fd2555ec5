package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Column;
import clenchbook.reports.blocks.Block.Row;
import clenchbook.reports.blocks.FigureText;
import java.util.List;

/**
 * How to rate a task, in half a page. The scale's words follow Borg's category-ratio scale (Borg's
 * Perceived Exertion and Pain Scales, 1998; from memory).
 */
final class RatingGuide {

  private RatingGuide() {}

  /** The guide as blocks. */
  static List<Block> blocks(FigureText text) {
    return List.of(
        new Block.Heading(1, text.say("workload.guide")),
        new Block.Paragraph(text.say("workload.guide.tasks")),
        new Block.Table(
            text.say("workload.guide.effort"),
            List.of(
                Column.words(text.say("workload.guide.rating"), 1),
                Column.words(text.say("workload.guide.feels"), 8)),
            scale(text)),
        new Block.Paragraph(text.say("workload.guide.efforts")),
        new Block.Paragraph(text.say("workload.guide.wrist")),
        new Block.Paragraph(text.say("workload.guide.blows")),
        new Block.Paragraph(text.say("workload.guide.trunk")));
  }

  private static List<Row> scale(FigureText text) {
    return List.of(
        Row.of(text.plain(0), text.say("workload.scale.nothing")),
        Row.of(text.plain(0.5), text.say("workload.scale.justNoticeable")),
        Row.of(text.plain(1), text.say("workload.scale.veryWeak")),
        Row.of(text.plain(2), text.say("workload.scale.weak")),
        Row.of(text.plain(3), text.say("workload.scale.moderate")),
        Row.of(text.plain(5), text.say("workload.scale.strong")),
        Row.of(text.plain(7), text.say("workload.scale.veryStrong")),
        Row.of(text.plain(10), text.say("workload.scale.extremelyStrong")));
  }
}

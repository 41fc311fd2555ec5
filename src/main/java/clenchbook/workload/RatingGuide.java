package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Column;
import clenchbook.reports.blocks.Block.Row;
import java.util.List;

/**
 * How to rate a task, in half a page. The scale's words follow Borg's category-ratio scale (Borg's
 * Perceived Exertion and Pain Scales, 1998; from memory).
 */
final class RatingGuide {

  private static final List<Row> SCALE =
      List.of(
          Row.of("0", "nothing at all"),
          Row.of("0.5", "just noticeable"),
          Row.of("1", "very weak"),
          Row.of("2", "weak, light"),
          Row.of("3", "moderate"),
          Row.of("5", "strong, heavy"),
          Row.of("7", "very strong"),
          Row.of("10", "extremely strong, the hardest you have known"));

  private RatingGuide() {}

  /** The guide as blocks. */
  static List<Block> blocks() {
    return List.of(
        new Block.Heading(1, "How to rate your tasks"),
        new Block.Paragraph(
            "One row per task in the sheet Strain: trim, shape hot, shape cold, nail, make, grind,"
                + " drive. Rate an ordinary horse, not the worst one. Ask someone to film a few"
                + " minutes from the side: the film answers most of it. A task may have several"
                + " rows when it holds quite different efforts, such as nippers and rasp."),
        new Block.Table(
            "Effort CR10: how hard the hand and forearm work, said straight after the task",
            List.of(Column.words("Rating", 1), Column.words("Feels", 8)),
            SCALE),
        new Block.Paragraph(
            "Efforts per min and Seconds per effort: on the film count the squeezes, cuts or"
                + " strokes that take force in one full minute, three times, and take the mean;"
                + " time ten of them together and divide by ten. Efforts times seconds can't exceed"
                + " 60."),
        new Block.Paragraph(
            "Wrist deg and Wrist direction: stop the film in mid-effort; 0 is straight, flexion is"
                + " palm towards the forearm, extension the back of the hand towards it."),
        new Block.Paragraph(
            "Blows per shoe: count every hammer blow for four shoes hot and four cold, from first"
                + " to last, and take the means; the same for nailing and clenching, and for a shoe"
                + " made from bar."),
        new Block.Paragraph(
            "Trunk deg and Longest hold s: the angle between your back and upright in the film, and"
                + " the longest time you stay down without coming up. Vibration m/s2: the grinder"
                + " maker's declared total value, better a measured one. Noise dBA: a sound-level"
                + " meter beside the ear while you work; a telephone is only a hint."));
  }
}

package clenchbook.reports.blocks;

import java.util.List;

/**
 * A report: a title and blocks in reading order.
 *
 * @param name the file's name without extension, such as {@code margins}
 * @param title the title
 * @param subtitle the period and business
 * @param caution what stands at the foot of each page; empty for none
 * @param blocks the content
 */
public record Report(
    String name, String title, String subtitle, String caution, List<Block> blocks) {
  /** Copies its list. */
  public Report {
    blocks = List.copyOf(blocks);
  }
}

package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.Report;
import java.util.List;

/**
 * What the year asks of the body, ready to print.
 *
 * @param figures the rows of {@code figures/workload.csv}
 * @param report what {@code workload.pdf} says
 * @param page a short form for the month's page
 * @param warnings one plain sentence for each of the farrier's own limits that is passed or will be
 */
public record WorkloadFindings(
    FigureTable figures, Report report, List<Block> page, List<String> warnings) {
  /** Copies its lists. */
  public WorkloadFindings {
    page = List.copyOf(page);
    warnings = List.copyOf(warnings);
  }
}

package clenchbook.workload;

import clenchbook.report.Block;
import clenchbook.report.Report;
import java.util.ArrayList;
import java.util.List;

/** What {@code workload.pdf} says. */
final class WorkloadReport {

  private WorkloadReport() {}

  static Report of(WorkYear work) {
    List<Block> blocks = new ArrayList<>();
    if (work.load().hours() == 0) {
      blocks.add(new Block.Paragraph(WITHOUT_MINUTES));
    }
    blocks.addAll(new HoursSection(work).blocks());
    
    blocks.addAll(new StrainSection(work).blocks());
    blocks.addAll(new OutlookSection(work).blocks());
    blocks.addAll(RatingGuide.blocks());
    return new Report(
        "workload", "The body's year", subtitle(work), Cautions.FOOT, blocks);
  }

  private static final String WITHOUT_MINUTES =
      "No minutes are known for the year to date, so there are no hours to show. Write Trim, Shape,"
          + " Nail and Grind min or just Total min into Visits, or standard minutes into Work;"
          + " Drive min into Trips or Places.";

  private static String subtitle(WorkYear work) {
    return work.year().name()
            + ": "
            + Dates.day(work.year().from())
            + " to "
            + Dates.day(work.year().to());
  }
}

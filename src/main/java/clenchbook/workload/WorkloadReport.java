package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Report;
import clenchbook.workload.hours.Dates;
import java.util.ArrayList;
import java.util.List;

/** What {@code workload.pdf} says. */
final class WorkloadReport {

  private WorkloadReport() {}

  static Report of(WorkYear work) {
    List<Block> blocks = new ArrayList<>();
    HoursSection hours = new HoursSection(work);
    if (work.load().hours() > 0) {
      blocks.addAll(hours.blocks());
      blocks.addAll(new StrainSection(work).blocks());
      blocks.addAll(new OutlookSection(work).blocks());
    } else {
      blocks.addAll(hours.withoutMinutes());
      blocks.addAll(new StrainSection(work).blocks());
    }
    blocks.addAll(RatingGuide.blocks());
    return new Report("workload", "The body's year", subtitle(work), Cautions.FOOT, blocks);
  }

  private static String subtitle(WorkYear work) {
    return work.year().name()
        + ": "
        + Dates.day(work.year().from())
        + " to "
        + Dates.day(work.year().to());
  }
}

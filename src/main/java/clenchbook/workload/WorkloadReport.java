package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.Report;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What {@code workload.pdf} and its annex say. */
final class WorkloadReport {

  private WorkloadReport() {}

  static Report of(WorkYear work) {
    return new Report(
        "workload",
        work.text().say("workload.label"),
        work.text().say("workload.title"),
        subtitle(work),
        work.text().say("workload.caution"),
        Optional.of(new WorkloadAnswer(work).page()),
        evidence(work),
        annex(work),
        work.text().texts());
  }

  private static List<Block> evidence(WorkYear work) {
    List<Block> blocks = new ArrayList<>();
    HoursSection hours = new HoursSection(work);
    blocks.addAll(new StrainSection(work).scores());
    if (work.load().hours() > 0) {
      blocks.addAll(hours.blocks());
    } else {
      blocks.addAll(hours.withoutMinutes());
    }
    return blocks;
  }

  private static List<Block> annex(WorkYear work) {
    List<Block> blocks = new ArrayList<>();
    if (work.load().hours() > 0) {
      blocks.addAll(new HoursSection(work).further());
      blocks.addAll(new HardestSection(work).blocks());
    }
    blocks.addAll(new StrainSection(work).further());
    if (work.load().hours() > 0) {
      blocks.addAll(new OutlookSection(work).blocks());
    }
    blocks.addAll(RatingGuide.blocks(work.text()));
    return blocks;
  }

  private static String subtitle(WorkYear work) {
    FigureText text = work.text();
    String from = text.date(work.year().from());
    String to = text.date(work.year().to());
    return work.business().isEmpty()
        ? text.say("workload.subtitle", work.year().name(), from, to)
        : text.say("workload.subtitleOf", work.business(), work.year().name(), from, to);
  }
}

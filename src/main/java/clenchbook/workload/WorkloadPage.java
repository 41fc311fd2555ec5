package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.KeyFigure;
import clenchbook.workload.hours.FigurePeriod;
import clenchbook.workload.hours.HoursMeasure;
import clenchbook.workload.hours.Load;
import java.util.ArrayList;
import java.util.List;

/** The body on the month's page: the month's hours, the year's, the warnings, one picture. */
final class WorkloadPage {

  private WorkloadPage() {}

  static List<Block> of(WorkYear work) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.KeyFigures(figures(work)));
    work.warnings().forEach(words -> blocks.add(new Block.Caution(words)));
    blocks.add(
        work.load().hours() > 0
            ? new YearPictures(work).weeks()
            : new Block.Paragraph(HoursSection.WITHOUT_MINUTES));
    blocks.add(new Block.Caution(Cautions.FOOT));
    return blocks;
  }

  private static List<KeyFigure> figures(WorkYear work) {
    Load month = work.load(FigurePeriod.month(work.year().to()));
    KeyFigure horses = HoursSection.count("Horse-visits, the month", month.horses());
    if (work.load().hours() == 0) {
      return List.of(HoursSection.count("Days worked, the month", month.daysWorked()), horses);
    }
    return List.of(
        HoursSection.hours("Hours in all, the month", month.minutes(HoursMeasure.IN_ALL)),
        HoursSection.hours(
            "Under the horse, the month", month.minutes(HoursMeasure.UNDER_THE_HORSE)),
        HoursSection.hours("Hours in all, year to date", work.load().minutes(HoursMeasure.IN_ALL)),
        new HoursSection(work).projected(),
        horses);
  }
}

package clenchbook.workload;

import clenchbook.report.Block;
import clenchbook.report.Block.KeyFigure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The body on the month's page: the month's hours, the year's, the warnings, one picture. */
final class WorkloadPage {

  private WorkloadPage() {}

  static List<Block> of(WorkYear work) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.KeyFigures(figures(work)));
    work.warnings().forEach(words -> blocks.add(new Block.Caution(words)));
    blocks.add(new YearPictures(work).weeks());
    blocks.add(new Block.Caution(Cautions.FOOT));
    return blocks;
  }

  private static List<KeyFigure> figures(WorkYear work) {
    Load month = work.load(Period.month(work.year().to()));
    List<KeyFigure> figures = new ArrayList<>();
    figures.add(hours("Hours in all, the month", month.minutes(HoursMeasure.IN_ALL)));
    figures.add(hours("Under the horse, the month", month.minutes(HoursMeasure.UNDER_THE_HORSE)));
    figures.add(hours("Hours in all, year to date", work.load().minutes(HoursMeasure.IN_ALL)));
    figures.add(
        new KeyFigure(
            "Projected for the year",
            Digits.fixed(work.projection().hours(), 2) + " h",
            HoursSection.basis(work.load())));
    figures.add(
        new KeyFigure(
            "Horse-visits, the month", Integer.toString(month.horses()), Optional.empty()));
    return figures;
  }

  private static KeyFigure hours(String label, Minutes minutes) {
    return new KeyFigure(
        label, Digits.fixed(minutes.hours(), 2) + " h", Optional.of(minutes.weakest()));
  }
}

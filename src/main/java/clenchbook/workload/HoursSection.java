package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Cell;
import clenchbook.reports.blocks.Block.KeyFigure;
import clenchbook.reports.blocks.TableOf;
import clenchbook.workload.hours.HoursMeasure;
import clenchbook.workload.hours.LimitWarnings;
import clenchbook.workload.hours.Minutes;
import clenchbook.workload.hours.OwnLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The part of the pages that says how many hours went where. */
final class HoursSection {

  /** What to write where, in a book without minutes. */
  static final String WITHOUT_MINUTES =
      "No minutes are known for the year to date, so there are no hours to show. Write Trim, Shape,"
          + " Nail and Grind min or just Total min into Visits, or standard minutes into Work;"
          + " Drive min into Trips or Places.";

  private final WorkYear work;

  HoursSection(WorkYear work) {
    this.work = work;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(1, "The hours"));
    blocks.add(new Block.Paragraph(courseInWords()));
    blocks.addAll(limits());
    blocks.add(new YearPictures(work).weeks());
    blocks.addAll(new MonthTables(work).blocks());
    blocks.add(new Block.Paragraph(new HardestSection(work).runInWords()));
    if (work.unsaid() > 0) {
      blocks.add(
          new Block.Paragraph(
              LimitWarnings.counted(work.unsaid(), "shoe")
                  + " nailed on without a word in Shaping: counted as cold, at the stall jack."));
    }
    return blocks;
  }

  /** For the annex: what each hour rests on, and the course of the year. */
  List<Block> further() {
    return List.of(
        new Block.Heading(1, "Where the hours went"),
        activities(),
        new YearPictures(work).course());
  }

  /** What can be said without any minutes: counts, limits, runs. */
  List<Block> withoutMinutes() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(WITHOUT_MINUTES));
    blocks.add(
        new Block.KeyFigures(
            List.of(
                count("Days worked", work.load().daysWorked()),
                count("Horse-visits", work.load().horses()))));
    blocks.addAll(limits());
    if (work.load().daysWorked() > 0) {
      blocks.add(new MonthTables(work).counts());
      blocks.add(new Block.Paragraph(new HardestSection(work).runInWords()));
    }
    return blocks;
  }

  /** A large count. */
  KeyFigure count(String label, int count) {
    return new KeyFigure(label, work.text().whole(count), Optional.empty());
  }

  private List<Block> limits() {
    List<Block> blocks = new ArrayList<>();
    work.warnings().forEach(words -> blocks.add(new Block.Paragraph(words)));
    if (blocks.isEmpty()) {
      blocks.add(new Block.Paragraph(withoutWarning()));
    }
    return blocks;
  }

  private String withoutWarning() {
    OwnLimits limits = work.limits();
    boolean none =
        limits.yearlyHours().isEmpty()
            && limits.weeklyHours().isEmpty()
            && limits.horsesPerDay().isEmpty();
    return none
        ? "No limits are set. Give Yearly hours limit, Weekly hours limit or Horses per day limit"
            + " in Settings and this page warns when one is passed or will be."
        : "None of your limits was passed, and the projection passes none.";
  }

  private Block activities() {
    return TableOf.rows(List.of(HoursMeasure.values()))
        .words("Measure", 4, HoursMeasure::measure)
        .cell("Hours", 2, measure -> cell(work.load().minutes(measure)))
        .words("Rests on", 6, measure -> restsOn(work.load().minutes(measure)))
        .totalsWhere(measure -> measure == HoursMeasure.IN_ALL)
        .captioned(
            "Where the hours went, "
                + work.text().date(work.year().from())
                + " to "
                + work.text().date(work.year().to()));
  }

  private static String restsOn(Minutes minutes) {
    return minutes.total() > 0 ? minutes.basis() : "";
  }

  /** Hours with the mark of their basis; none for no hours. */
  Cell cell(Minutes minutes) {
    String text = work.text().hours(minutes.hours());
    return minutes.total() > 0 ? Cell.of(text, minutes.weakest()) : Cell.of(text);
  }

  private String courseInWords() {
    String toDate = work.text().hours(work.projection().toDate());
    String projected =
        work.whole()
            ? "Hours in all: " + toDate + "."
            : "Hours in all: "
                + toDate
                + " to date, "
                + work.text().hours(work.projection().hours())
                + " projected for the year ("
                + work.projection().basis()
                + ").";
    return work.lastYear() > 0
        ? projected
            + " Last year: "
            + (work.whole() ? "" : work.text().hours(work.lastYearToDate()) + " to the same day, ")
            + work.text().hours(work.lastYear())
            + " in all"
            + work.bookBegins()
                .map(day -> " (the book begins " + work.text().date(day) + ")")
                .orElse("")
            + "."
        : projected + " The book holds no work of last year to compare with.";
  }
}

package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Cell;
import clenchbook.reports.blocks.Block.KeyFigure;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.TableOf;
import clenchbook.workload.hours.HoursMeasure;
import clenchbook.workload.hours.Minutes;
import clenchbook.workload.hours.OwnLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The part of the pages that says how many hours went where. */
final class HoursSection {

  private final WorkYear work;
  private final FigureText text;

  HoursSection(WorkYear work) {
    this.work = work;
    this.text = work.text();
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(1, text.say("workload.hours")));
    blocks.add(new Block.Paragraph(courseInWords()));
    blocks.addAll(limits());
    blocks.add(new YearPictures(work).weeks());
    blocks.addAll(new MonthTables(work).blocks());
    blocks.add(new Block.Paragraph(new HardestSection(work).runInWords()));
    if (work.unsaid() > 0) {
      blocks.add(new Block.Paragraph(text.say("workload.hours.unsaid", work.unsaid())));
    }
    return blocks;
  }

  /** For the annex: what each hour rests on, and the course of the year. */
  List<Block> further() {
    return List.of(
        new Block.Heading(1, text.say("workload.hours.where")),
        activities(),
        new YearPictures(work).course());
  }

  /** What can be said without any minutes: counts, limits, runs. */
  List<Block> withoutMinutes() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(text.say("workload.withoutMinutes")));
    blocks.add(
        new Block.KeyFigures(
            List.of(
                count(text.say("workload.column.daysWorked"), work.load().daysWorked()),
                count(text.say("workload.column.horseVisits"), work.load().horses()))));
    blocks.addAll(limits());
    if (work.load().daysWorked() > 0) {
      blocks.add(new MonthTables(work).counts());
      blocks.add(new Block.Paragraph(new HardestSection(work).runInWords()));
    }
    return blocks;
  }

  /** A large count. */
  KeyFigure count(String label, int count) {
    return new KeyFigure(label, text.whole(count), Optional.empty());
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
    return none ? text.say("workload.limit.noneSet") : text.say("workload.limit.nonePassed");
  }

  private Block activities() {
    return TableOf.rows(List.of(HoursMeasure.values()))
        .words(text.say("workload.column.measure"), 4, measure -> text.say(measure.title()))
        .cell(text.say("workload.column.hours"), 2, measure -> cell(work.load().minutes(measure)))
        .words(
            text.say("workload.column.restsOn"),
            6,
            measure -> restsOn(work.load().minutes(measure)))
        .totalsWhere(measure -> measure == HoursMeasure.IN_ALL)
        .captioned(
            text.say(
                "workload.hours.whereFromTo",
                text.date(work.year().from()),
                text.date(work.year().to())));
  }

  private String restsOn(Minutes minutes) {
    return minutes.total() > 0 ? text.say(minutes.basis().said()) : "";
  }

  /** Hours with the mark of their basis; none for no hours. */
  Cell cell(Minutes minutes) {
    String hours = text.hours(minutes.hours());
    return minutes.total() > 0 ? Cell.of(hours, minutes.weakest()) : Cell.of(hours);
  }

  private String courseInWords() {
    return course() + " " + beside();
  }

  private String course() {
    String toDate = text.hours(work.projection().toDate());
    return work.whole()
        ? text.say("workload.course.year", toDate)
        : text.say(
            "workload.course.projected",
            toDate,
            text.hours(work.projection().hours()),
            work.projection().basis().said());
  }

  private String beside() {
    if (work.lastYear() <= 0) {
      return text.say("workload.course.noLastYear");
    }
    String inAll = text.hours(work.lastYear());
    return work.whole() ? besideWhole(inAll) : besideToDate(inAll);
  }

  private String besideWhole(String inAll) {
    return work.bookBegins()
        .map(day -> text.say("workload.course.lastYearPart", inAll, text.date(day)))
        .orElseGet(() -> text.say("workload.course.lastYear", inAll));
  }

  private String besideToDate(String inAll) {
    String same = text.hours(work.lastYearToDate());
    return work.bookBegins()
        .map(day -> text.say("workload.course.lastYearToDatePart", same, inAll, text.date(day)))
        .orElseGet(() -> text.say("workload.course.lastYearToDate", same, inAll));
  }
}

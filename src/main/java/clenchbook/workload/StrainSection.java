package clenchbook.workload;

import clenchbook.report.Block;
import clenchbook.report.Block.Column;
import clenchbook.report.Block.Row;
import clenchbook.report.Chart;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The part of the pages that says what the published methods make of the days. */
final class StrainSection {

  private final WorkYear work;

  StrainSection(WorkYear work) {
    this.work = work;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(1, "Strain by published methods"));
    List<YearScores.Summary> summaries = work.scores().summaries();
    if (summaries.isEmpty()) {
      blocks.add(new Block.Paragraph("Nothing could be computed for the year to date."));
    } else {
      blocks.add(scores(summaries));
      addPicture(blocks, summaries);
      addUnrated(blocks);
    }
    addHolds(blocks);
    addAbsent(blocks);
    if (!summaries.isEmpty()) {
      blocks.add(methods());
    }
    noiseNote(blocks);
    return blocks;
  }

  private Block scores(List<YearScores.Summary> summaries) {
    List<Row> rows = new ArrayList<>();
    for (YearScores.Summary summary : summaries) {
      MethodScore score = summary.worst().score();
      rows.add(
          Row.of(
              summary.measure(),
              score.unit(),
              Digits.fixed(summary.typical(), 2),
              Digits.fixed(score.score().number().orElseThrow(), 2),
              Dates.day(summary.worst().date()),
              guidance(score)));
    }
    return new Block.Table(
        "A typical day is the middle one of the days with hours; each day over its real hours",
        List.of(
            Column.words("Method", 5),
            Column.words("Unit", 2),
            Column.number("Typical day", 2),
            Column.number("Worst day", 2),
            Column.words("On", 3),
            Column.words("Published value", 5)),
        rows);
  }

  private static String guidance(MethodScore score) {
    return score.guidance().isPresent()
        ? Digits.plain(score.guidance().getAsDouble()) + ": " + score.guidanceName()
        : "";
  }

  /** Typical and worst day by task, where at least two tasks are rated. */
  private void addPicture(List<Block> blocks, List<YearScores.Summary> summaries) {
    List<YearScores.Summary> strain = summaries.stream().filter(StrainSection::isStrain).toList();
    if (strain.size() < 2) {
      return;
    }
    blocks.add(
        new Block.Picture(
            "Hand and wrist strain by task",
            "Strain indices on a typical and on the worst day, by task and for the whole day.",
            new Chart.Columns(
                "task",
                "strain index",
                strain.stream().map(StrainSection::shortName).toList(),
                List.of(
                    new Chart.Series(
                        "typical day", strain.stream().map(YearScores.Summary::typical).toList()),
                    new Chart.Series(
                        "worst day",
                        strain.stream()
                            .map(one -> one.worst().score().score().number().orElseThrow())
                            .toList())),
                false,
                true,
                List.of(
                    new Chart.Limit("called safe up to here", RevisedStrainIndex.SAFE_UP_TO)))));
  }

  private static boolean isStrain(YearScores.Summary summary) {
    Method method = summary.worst().score().method();
    return method.equals(RevisedStrainIndex.METHOD)
        || method.equals(CompositeStrainIndex.METHOD)
        || method.equals(CumulativeStrainIndex.METHOD);
  }

  private static String shortName(YearScores.Summary summary) {
    int comma = summary.measure().indexOf(", ");
    return comma < 0 ? "whole day" : summary.measure().substring(comma + 2);
  }

  /** Tasks with hours that a sum leaves out, where the sum has others in it. */
  private void addUnrated(List<Block> blocks) {
    List<String> parts = new ArrayList<>();
    addUnrated(parts, "hand effort", rating -> !rating.efforts().isEmpty());
    addUnrated(parts, "noise", rating -> rating.noiseDba().isPresent());
    addUnrated(parts, "trunk", rating -> rating.trunkDegrees().isPresent());
    if (!parts.isEmpty()) {
      blocks.add(
          new Block.Paragraph(
              "Not in the sums, because not rated: " + String.join("; ", parts) + "."));
    }
  }

  private void addUnrated(List<String> parts, String what, Predicate<TaskRating> rated) {
    List<String> tasks = work.ratings().unrated(work.load(), rated);
    if (!tasks.isEmpty() && !work.ratings().where(rated).isEmpty()) {
      parts.add("for " + what + " " + String.join(", ", tasks));
    }
  }

  private void addHolds(List<Block> blocks) {
    List<Row> rows = new ArrayList<>();
    for (TaskRating rating : work.holds()) {
      double degrees = rating.trunkDegrees().orElseThrow();
      Score allowed = TrunkPosture.longestHoldMinutes(degrees);
      if (allowed.number().isPresent()) {
        double hold = rating.longestHoldSeconds().orElseThrow() / 60;
        rows.add(
            Row.of(
                rating.task().word(),
                Digits.plain(degrees),
                Digits.fixed(hold, 2),
                Digits.plain(allowed.number().getAsDouble()),
                hold > allowed.number().getAsDouble() ? "longer than the standard allows" : ""));
      }
    }
    if (!rows.isEmpty()) {
      blocks.add(
          new Block.Table(
              "Your longest hold against the standard's holding time",
              List.of(
                  Column.words("Task", 3),
                  Column.number("Trunk, degrees", 2),
                  Column.number("Longest hold, minutes", 3),
                  Column.number("Holding time, minutes", 3),
                  Column.words("", 4)),
              rows));
    }
  }

  private void addAbsent(List<Block> blocks) {
    List<AbsentMethod> absent = AbsentMethod.of(work);
    if (!absent.isEmpty()) {
      blocks.add(
          new Block.Table(
              "Not computed, and what it would take",
              List.of(Column.words("Method", 4), Column.words("Why", 8)),
              absent.stream().map(one -> Row.of(one.measure(), one.why())).toList()));
    }
  }

  private Block methods() {
    List<Method> methods = new ArrayList<>();
    methods.add(RevisedStrainIndex.METHOD);
    methods.add(CompositeStrainIndex.METHOD);
    methods.add(CumulativeStrainIndex.METHOD);
    methods.add(HandArmVibration.METHOD);
    work.noise().forEach(criterion -> methods.add(criterion.method()));
    methods.add(TrunkPosture.METHOD);
    methods.add(DayScores.BENT_METHOD);
    return new Block.Table(
        "The methods, where they hold and where they say nothing",
        List.of(
            Column.words("Method", 3),
            Column.words("Source", 4),
            Column.words("Range", 5),
            Column.words("Does not cover", 5)),
        methods.stream()
            .map(
                method ->
                    Row.of(
                        method.name(), method.edition(), method.validRange(), method.notCovered()))
            .toList());
  }

  private void noiseNote(List<Block> blocks) {
    if (work.noise().size() == 1) {
      blocks.add(
          new Block.Paragraph(
              "No noise regulation is carried here for the book's country: only the recommended"
                  + " limit is shown. The country's own law comes first."));
    }
  }
}

package clenchbook.workload;

import clenchbook.book.Task;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.TableOf;
import clenchbook.workload.methods.Method;
import clenchbook.workload.methods.MethodScore;
import clenchbook.workload.posture.TrunkPosture;
import clenchbook.workload.scores.DayScores;
import clenchbook.workload.scores.YearScores;
import clenchbook.workload.strain.CompositeStrainIndex;
import clenchbook.workload.strain.CumulativeStrainIndex;
import clenchbook.workload.strain.RevisedStrainIndex;
import clenchbook.workload.strain.TaskRating;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/** The part of the pages that says what the published methods make of the days. */
final class StrainSection {

  private final WorkYear work;

  StrainSection(WorkYear work) {
    this.work = work;
  }

  /** What the methods say of the year's days, against their published values. */
  List<Block> scores() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(1, "Strain, vibration, noise and posture"));
    List<YearScores.Summary> summaries = work.scores().summaries();
    if (summaries.isEmpty()) {
      blocks.add(new Block.Paragraph("Nothing could be computed for the year to date."));
    } else {
      blocks.add(scores(summaries));
      addUnrated(blocks);
    }
    addHolds(blocks);
    addAbsent(blocks);
    noiseNote(blocks);
    return blocks;
  }

  /** For the annex: strain by task, and the methods with their limits. */
  List<Block> further() {
    List<YearScores.Summary> summaries = work.scores().summaries();
    List<Block> blocks = new ArrayList<>();
    if (!summaries.isEmpty()) {
      blocks.add(new Block.Heading(1, "Strain by published methods"));
      addPicture(blocks, summaries);
      blocks.add(methods());
    }
    return blocks;
  }

  private Block scores(List<YearScores.Summary> summaries) {
    return TableOf.rows(summaries)
        .words("Method", 5, YearScores.Summary::measure)
        .words("Unit", 2, summary -> summary.worst().score().unit())
        .number("Typical day", 2, summary -> work.text().number(summary.typical(), 2))
        .number("Worst day", 2, summary -> work.text().number(worst(summary), 2))
        .words("On", 3, summary -> work.text().date(summary.worst().date()))
        .words("Published value", 5, summary -> guidance(summary.worst().score()))
        .captioned(
            "A typical day is the middle one of the days with hours; each day over its real hours");
  }

  private static double worst(YearScores.Summary summary) {
    return summary.worst().score().score().number().orElseThrow();
  }

  private String guidance(MethodScore score) {
    return score.guidance().isPresent()
        ? work.text().plain(score.guidance().getAsDouble()) + ": " + score.guidanceName()
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
                        "typical day",
                        strain.stream().map(YearScores.Summary::typical).toList(),
                        strain.stream().map(one -> work.text().number(one.typical(), 2)).toList()),
                    new Chart.Series(
                        "worst day",
                        strain.stream()
                            .map(one -> one.worst().score().score().number().orElseThrow())
                            .toList(),
                        strain.stream().map(one -> work.text().number(worst(one), 2)).toList())),
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
    List<Hold> holds = work.holds().stream().flatMap(rating -> Hold.of(rating).stream()).toList();
    if (!holds.isEmpty()) {
      blocks.add(
          TableOf.rows(holds)
              .words("Task", 3, hold -> hold.task().word())
              .number("Trunk, degrees", 2, hold -> work.text().plain(hold.degrees()))
              .number("Longest hold, minutes", 3, hold -> work.text().number(hold.minutes(), 2))
              .number("Holding time, minutes", 3, hold -> work.text().plain(hold.allowed()))
              .words("", 4, Hold::verdict)
              .captioned("Your longest hold against the standard's holding time"));
    }
  }

  /** The longest hold of a task beside the time the standard allows at that angle. */
  private record Hold(Task task, double degrees, double minutes, double allowed) {
    private static Optional<Hold> of(TaskRating rating) {
      double degrees = rating.trunkDegrees().orElseThrow();
      OptionalDouble allowed = TrunkPosture.longestHoldMinutes(degrees).number();
      return allowed.isEmpty()
          ? Optional.empty()
          : Optional.of(
              new Hold(
                  rating.task(),
                  degrees,
                  rating.longestHoldSeconds().orElseThrow() / 60,
                  allowed.getAsDouble()));
    }

    private String verdict() {
      return minutes > allowed ? "longer than the standard allows" : "";
    }
  }

  private void addAbsent(List<Block> blocks) {
    List<AbsentMethod> absent = AbsentMethod.of(work);
    if (!absent.isEmpty()) {
      blocks.add(
          TableOf.rows(absent)
              .words("Method", 4, AbsentMethod::measure)
              .words("Why", 8, AbsentMethod::why)
              .captioned("Not computed, and what it would take"));
    }
  }

  private Block methods() {
    List<Method> methods = new ArrayList<>();
    methods.add(RevisedStrainIndex.METHOD);
    methods.add(CompositeStrainIndex.METHOD);
    methods.add(CumulativeStrainIndex.METHOD);
    methods.add(work.rules().vibration());
    work.rules().noise().forEach(criterion -> methods.add(criterion.method()));
    methods.add(TrunkPosture.METHOD);
    methods.add(DayScores.BENT_METHOD);
    return TableOf.rows(methods)
        .words("Method", 3, Method::name)
        .words("Source", 4, Method::edition)
        .words("Range", 5, Method::validRange)
        .words("Does not cover", 5, Method::notCovered)
        .captioned("The methods, where they hold and where they say nothing");
  }

  private void noiseNote(List<Block> blocks) {
    if (work.rules().noise().size() == 1) {
      blocks.add(
          new Block.Paragraph(
              "No noise regulation is carried here for the book's country: only the recommended"
                  + " limit is shown. The country's own law comes first."));
    }
  }
}

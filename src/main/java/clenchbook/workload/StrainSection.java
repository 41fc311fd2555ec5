package clenchbook.workload;

import clenchbook.book.Task;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.TableOf;
import clenchbook.texts.Message;
import clenchbook.workload.methods.Method;
import clenchbook.workload.methods.MethodScore;
import clenchbook.workload.methods.TaskName;
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
import java.util.function.Function;
import java.util.function.Predicate;

/** The part of the pages that says what the published methods make of the days. */
final class StrainSection {

  private final WorkYear work;
  private final FigureText text;

  StrainSection(WorkYear work) {
    this.work = work;
    this.text = work.text();
  }

  /** What the methods say of the year's days, against their published values. */
  List<Block> scores() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(1, text.say("workload.strain")));
    List<YearScores.Summary> summaries = work.scores().summaries();
    if (summaries.isEmpty()) {
      blocks.add(new Block.Paragraph(text.say("workload.strain.nothing")));
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
      blocks.add(new Block.Heading(1, text.say("workload.strain.methods")));
      addPicture(blocks, summaries);
      blocks.add(methods());
    }
    return blocks;
  }

  private Block scores(List<YearScores.Summary> summaries) {
    return TableOf.rows(summaries)
        .words(
            text.say("workload.column.method"),
            5,
            summary -> text.say(summary.measure().name().said()))
        .words(text.say("workload.column.unit"), 2, summary -> unit(summary.worst().score()))
        .number(
            text.say("workload.column.typicalDay"), 2, summary -> text.number(summary.typical(), 2))
        .number(text.say("workload.column.worstDay"), 2, summary -> text.number(worst(summary), 2))
        .words(text.say("workload.column.on"), 3, summary -> text.date(summary.worst().date()))
        .words(
            text.say("workload.column.published"), 5, summary -> guidance(summary.worst().score()))
        .captioned(text.say("workload.strain.days"));
  }

  private String unit(MethodScore score) {
    return text.say(score.unit().written().said());
  }

  private static double worst(YearScores.Summary summary) {
    return summary.worst().score().score().number().orElseThrow();
  }

  private String guidance(MethodScore score) {
    return score
        .guidanceName()
        .map(
            name ->
                text.say(
                    "workload.strain.published",
                    text.plain(score.guidance().orElseThrow()),
                    name.said()))
        .orElse("");
  }

  /** Typical and worst day by task, where at least two tasks are rated. */
  private void addPicture(List<Block> blocks, List<YearScores.Summary> summaries) {
    List<YearScores.Summary> strain = summaries.stream().filter(StrainSection::isStrain).toList();
    if (strain.size() < 2) {
      return;
    }
    blocks.add(
        new Block.Picture(
            text.say("workload.strain.byTask"),
            text.say("workload.strain.byTaskInWords"),
            new Chart.Columns(
                text.say("workload.axis.task"),
                text.say("workload.axis.strainIndex"),
                strain.stream().map(this::shortName).toList(),
                List.of(
                    bars("workload.strain.typicalDay", strain, YearScores.Summary::typical),
                    bars("workload.strain.worstDay", strain, StrainSection::worst)),
                false,
                true,
                List.of(
                    new Chart.Limit(
                        text.say("workload.strain.safe"), RevisedStrainIndex.SAFE_UP_TO)))));
  }

  private Chart.Series bars(
      String key, List<YearScores.Summary> strain, Function<YearScores.Summary, Double> height) {
    List<Double> heights = strain.stream().map(height).toList();
    return new Chart.Series(
        text.say(key), heights, heights.stream().map(each -> text.number(each, 2)).toList());
  }

  private static boolean isStrain(YearScores.Summary summary) {
    Method method = summary.worst().score().method();
    return method.equals(RevisedStrainIndex.METHOD)
        || method.equals(CompositeStrainIndex.METHOD)
        || method.equals(CumulativeStrainIndex.METHOD);
  }

  private String shortName(YearScores.Summary summary) {
    return summary
        .measure()
        .task()
        .map(task -> text.say(TaskName.of(task)))
        .orElseGet(() -> text.say("workload.strain.wholeDay"));
  }

  /** Tasks with hours that a sum leaves out, where the sum has others in it. */
  private void addUnrated(List<Block> blocks) {
    List<Message> parts = new ArrayList<>();
    addUnrated(parts, "workload.unrated.effort", rating -> !rating.efforts().isEmpty());
    addUnrated(parts, "workload.unrated.noise", rating -> rating.noiseDba().isPresent());
    addUnrated(parts, "workload.unrated.trunk", rating -> rating.trunkDegrees().isPresent());
    if (!parts.isEmpty()) {
      blocks.add(new Block.Paragraph(text.say("workload.unrated", Message.joined("; ", parts))));
    }
  }

  private void addUnrated(List<Message> parts, String key, Predicate<TaskRating> rated) {
    List<Message> tasks =
        work.ratings().unrated(work.load(), rated).stream().map(TaskName::of).toList();
    if (!tasks.isEmpty() && !work.ratings().where(rated).isEmpty()) {
      parts.add(Message.of(key, tasks));
    }
  }

  private void addHolds(List<Block> blocks) {
    List<Hold> holds = work.holds().stream().flatMap(rating -> Hold.of(rating).stream()).toList();
    if (!holds.isEmpty()) {
      blocks.add(
          TableOf.rows(holds)
              .words(
                  text.say("workload.column.task"), 3, hold -> text.say(TaskName.of(hold.task())))
              .number(text.say("workload.column.trunk"), 2, hold -> text.plain(hold.degrees()))
              .number(
                  text.say("workload.column.longestHold"),
                  3,
                  hold -> text.number(hold.minutes(), 2))
              .number(
                  text.say("workload.column.holdingTime"), 3, hold -> text.plain(hold.allowed()))
              .words("", 4, hold -> hold.tooLong() ? text.say("workload.hold.tooLong") : "")
              .captioned(text.say("workload.hold.table")));
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

    private boolean tooLong() {
      return minutes > allowed;
    }
  }

  private void addAbsent(List<Block> blocks) {
    List<AbsentMethod> absent = AbsentMethod.of(work);
    if (!absent.isEmpty()) {
      blocks.add(
          TableOf.rows(absent)
              .words(
                  text.say("workload.column.method"),
                  4,
                  one -> text.say(one.measure().name().said()))
              .words(text.say("workload.column.why"), 8, one -> text.say(one.why().said()))
              .captioned(text.say("workload.absent")));
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
        .words(text.say("workload.column.method"), 3, method -> text.say(method.name().said()))
        .words(text.say("workload.column.source"), 4, method -> text.say(method.edition()))
        .words(text.say("workload.column.range"), 5, method -> text.say(method.validRange()))
        .words(text.say("workload.column.notCovered"), 5, method -> text.say(method.notCovered()))
        .captioned(text.say("workload.methods"));
  }

  private void noiseNote(List<Block> blocks) {
    if (work.rules().noise().size() == 1) {
      blocks.add(new Block.Paragraph(text.say("workload.noise.noRegulation")));
    }
  }
}

package clenchbook.workload;

import clenchbook.book.Task;
import clenchbook.workload.methods.Score;
import clenchbook.workload.noise.NoiseCriterion;
import clenchbook.workload.posture.TrunkPosture;
import clenchbook.workload.scores.DayScores;
import clenchbook.workload.strain.CumulativeStrainIndex;
import clenchbook.workload.strain.RevisedStrainIndex;
import clenchbook.workload.strain.TaskRating;
import clenchbook.workload.vibration.HandArmVibration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A method that says nothing of the year, and why: not rated, no hours, or out of its range.
 *
 * @param measure the method's name, with the task where it is about one
 * @param why a sentence part
 */
record AbsentMethod(String measure, String why) {

  /** Every method or task of it without a figure, in the order of the methods. */
  static List<AbsentMethod> of(WorkYear year) {
    List<AbsentMethod> absent = new ArrayList<>();
    addStrain(absent, year);
    addVibration(absent, year);
    addNoise(absent, year);
    addTrunk(absent, year);
    addBlows(absent, year);
    Set<String> said = new TreeSet<>();
    absent.forEach(one -> said.add(one.measure()));
    for (Map.Entry<String, String> reason : year.scores().outOfRange().entrySet()) {
      if (said.add(reason.getKey())) {
        absent.add(new AbsentMethod(reason.getKey(), reason.getValue()));
      }
    }
    return absent;
  }

  private static void addStrain(List<AbsentMethod> absent, WorkYear year) {
    String index = RevisedStrainIndex.METHOD.name();
    for (TaskRating rating : year.ratings().where(one -> !one.missing().isEmpty())) {
      absent.add(
          new AbsentMethod(
              index + ", " + rating.task().word(),
              "Strain lacks " + String.join(", ", rating.missing())));
    }
    if (year.ratings().where(rating -> !rating.efforts().isEmpty()).isEmpty()) {
      String why =
          "rate Effort CR10, Efforts per min, Seconds per effort, Wrist deg and Wrist direction of"
              + " a task in Strain";
      absent.add(new AbsentMethod(index, why));
      absent.add(new AbsentMethod(CumulativeStrainIndex.METHOD.name(), why));
    } else if (missing(year, CumulativeStrainIndex.METHOD.name())) {
      absent.add(new AbsentMethod(CumulativeStrainIndex.METHOD.name(), "no hours of rated tasks"));
    }
  }

  private static void addVibration(List<AbsentMethod> absent, WorkYear year) {
    if (missing(year, HandArmVibration.NAME)) {
      absent.add(
          new AbsentMethod(
              HandArmVibration.NAME,
              year.ratings().of(Task.GRIND).vibration().isPresent()
                  ? "no hours of grinding"
                  : "give the grinder's Vibration m/s2 in Strain, task grind"));
    }
  }

  private static void addNoise(List<AbsentMethod> absent, WorkYear year) {
    boolean rated = !year.ratings().where(rating -> rating.noiseDba().isPresent()).isEmpty();
    for (NoiseCriterion criterion : year.rules().noise()) {
      if (missing(year, criterion.method().name())) {
        absent.add(
            new AbsentMethod(
                criterion.method().name(),
                rated ? "no hours of rated tasks" : "give Noise dBA of the loud tasks in Strain"));
      }
    }
  }

  private static void addTrunk(List<AbsentMethod> absent, WorkYear year) {
    boolean rated = !year.ratings().where(rating -> rating.trunkDegrees().isPresent()).isEmpty();
    if (missing(year, DayScores.BENT_TIME)) {
      absent.add(
          new AbsentMethod(
              DayScores.BENT_TIME,
              rated ? "no hours of rated tasks" : "give Trunk deg of the tasks in Strain"));
    }
    if (year.holds().isEmpty()) {
      absent.add(
          new AbsentMethod(
              TrunkPosture.METHOD.name(), "give Trunk deg and Longest hold s of a task in Strain"));
    }
    for (TaskRating rating : year.holds()) {
      Score score = hold(rating);
      if (score.number().isEmpty()) {
        absent.add(new AbsentMethod(holdMeasure(rating), score.why()));
      }
    }
  }

  private static void addBlows(List<AbsentMethod> absent, WorkYear year) {
    if (!year.ratings().ratesBlows()) {
      absent.add(new AbsentMethod("blows", "count Blows per shoe of the hammer tasks in Strain"));
    }
  }

  private static boolean missing(WorkYear year, String measure) {
    return year.scores().find(measure).isEmpty()
        && !year.scores().outOfRange().containsKey(measure);
  }

  /** The longest hold of a task as a share of the standard's holding time. */
  static Score hold(TaskRating rating) {
    return TrunkPosture.shareOfLongestHold(
        rating.trunkDegrees().orElseThrow(), rating.longestHoldSeconds().orElseThrow());
  }

  /** What that measure is called. */
  static String holdMeasure(TaskRating rating) {
    return TrunkPosture.METHOD.name() + ", " + rating.task().word();
  }
}

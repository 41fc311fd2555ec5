package clenchbook.workload;

import clenchbook.book.Task;
import clenchbook.texts.Message;
import clenchbook.workload.hours.Phrase;
import clenchbook.workload.methods.Measure;
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
 * @param measure the method, with the task where it is about one
 * @param why a sentence part
 */
record AbsentMethod(Measure measure, Phrase why) {
  private static final Phrase NO_HOURS =
      Phrase.of("no hours of rated tasks", "workload.absent.noHours");

  /** Every method or task of it without a figure, in the order of the methods. */
  static List<AbsentMethod> of(WorkYear year) {
    List<AbsentMethod> absent = new ArrayList<>();
    addStrain(absent, year);
    addVibration(absent, year);
    addNoise(absent, year);
    addTrunk(absent, year);
    addBlows(absent, year);
    Set<Measure> said = new TreeSet<>();
    absent.forEach(one -> said.add(one.measure()));
    for (Map.Entry<Measure, Phrase> reason : year.scores().outOfRange().entrySet()) {
      if (said.add(reason.getKey())) {
        absent.add(new AbsentMethod(reason.getKey(), reason.getValue()));
      }
    }
    return absent;
  }

  private static void addStrain(List<AbsentMethod> absent, WorkYear year) {
    for (TaskRating rating : year.ratings().where(one -> !one.missing().isEmpty())) {
      absent.add(
          new AbsentMethod(
              Measure.of(RevisedStrainIndex.METHOD, rating.task()), lacks(rating.missing())));
    }
    Measure wholeDay = Measure.of(CumulativeStrainIndex.METHOD.name());
    if (year.ratings().where(rating -> !rating.efforts().isEmpty()).isEmpty()) {
      Phrase why =
          Phrase.of(
              "rate Effort CR10, Efforts per min, Seconds per effort, Wrist deg and Wrist"
                  + " direction of a task in Strain",
              "workload.absent.efforts");
      absent.add(new AbsentMethod(Measure.of(RevisedStrainIndex.METHOD.name()), why));
      absent.add(new AbsentMethod(wholeDay, why));
    } else if (missing(year, wholeDay)) {
      absent.add(new AbsentMethod(wholeDay, NO_HOURS));
    }
  }

  private static Phrase lacks(List<String> headings) {
    return new Phrase(
        "Strain lacks " + String.join(", ", headings),
        Message.of("workload.absent.lacks", headings));
  }

  private static void addVibration(List<AbsentMethod> absent, WorkYear year) {
    Measure vibration = Measure.of(HandArmVibration.NAME);
    if (missing(year, vibration)) {
      absent.add(
          new AbsentMethod(
              vibration,
              year.ratings().of(Task.GRIND).vibration().isPresent()
                  ? Phrase.of("no hours of grinding", "workload.absent.noGrinding")
                  : Phrase.of(
                      "give the grinder's Vibration m/s2 in Strain, task grind",
                      "workload.absent.vibration")));
    }
  }

  private static void addNoise(List<AbsentMethod> absent, WorkYear year) {
    boolean rated = !year.ratings().where(rating -> rating.noiseDba().isPresent()).isEmpty();
    Phrase toRate =
        Phrase.of("give Noise dBA of the loud tasks in Strain", "workload.absent.noise");
    for (NoiseCriterion criterion : year.rules().noise()) {
      Measure noise = Measure.of(criterion.method().name());
      if (missing(year, noise)) {
        absent.add(new AbsentMethod(noise, rated ? NO_HOURS : toRate));
      }
    }
  }

  private static void addTrunk(List<AbsentMethod> absent, WorkYear year) {
    boolean rated = !year.ratings().where(rating -> rating.trunkDegrees().isPresent()).isEmpty();
    Measure bent = Measure.of(DayScores.BENT_TIME);
    if (missing(year, bent)) {
      Phrase toRate = Phrase.of("give Trunk deg of the tasks in Strain", "workload.absent.trunk");
      absent.add(new AbsentMethod(bent, rated ? NO_HOURS : toRate));
    }
    if (year.holds().isEmpty()) {
      absent.add(
          new AbsentMethod(
              Measure.of(TrunkPosture.METHOD.name()),
              Phrase.of(
                  "give Trunk deg and Longest hold s of a task in Strain",
                  "workload.absent.hold")));
    }
    for (TaskRating rating : year.holds()) {
      hold(rating).why().ifPresent(why -> absent.add(new AbsentMethod(holdMeasure(rating), why)));
    }
  }

  private static void addBlows(List<AbsentMethod> absent, WorkYear year) {
    if (!year.ratings().ratesBlows()) {
      absent.add(
          new AbsentMethod(
              Measure.of(Phrase.of("blows", "workload.blows")),
              Phrase.of(
                  "count Blows per shoe of the hammer tasks in Strain", "workload.absent.blows")));
    }
  }

  private static boolean missing(WorkYear year, Measure measure) {
    return year.scores().find(measure).isEmpty()
        && !year.scores().outOfRange().containsKey(measure);
  }

  /** The longest hold of a task as a share of the standard's holding time. */
  static Score hold(TaskRating rating) {
    return TrunkPosture.shareOfLongestHold(
        rating.trunkDegrees().orElseThrow(), rating.longestHoldSeconds().orElseThrow());
  }

  /** What that measure is called. */
  static Measure holdMeasure(TaskRating rating) {
    return Measure.of(TrunkPosture.METHOD, rating.task());
  }
}

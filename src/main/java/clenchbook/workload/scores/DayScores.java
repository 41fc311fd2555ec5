package clenchbook.workload.scores;

import clenchbook.book.Task;
import clenchbook.texts.Message;
import clenchbook.workload.hours.Activity;
import clenchbook.workload.hours.Load;
import clenchbook.workload.hours.Phrase;
import clenchbook.workload.methods.Measure;
import clenchbook.workload.methods.Method;
import clenchbook.workload.methods.MethodScore;
import clenchbook.workload.methods.MethodScore.Subject;
import clenchbook.workload.methods.Score;
import clenchbook.workload.methods.Unit;
import clenchbook.workload.noise.NoiseCriterion;
import clenchbook.workload.noise.NoiseDose;
import clenchbook.workload.noise.NoiseDose.NoiseHours;
import clenchbook.workload.posture.TrunkPosture;
import clenchbook.workload.strain.CompositeStrainIndex;
import clenchbook.workload.strain.CumulativeStrainIndex;
import clenchbook.workload.strain.CumulativeStrainIndex.TaskHours;
import clenchbook.workload.strain.Ratings;
import clenchbook.workload.strain.RevisedStrainIndex;
import clenchbook.workload.strain.TaskRating;
import clenchbook.workload.vibration.HandArmVibration;
import clenchbook.workload.vibration.HandArmVibration.ToolHours;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.Predicate;

/** Every method that the farrier's ratings allow, over the real hours of one day. */
public final class DayScores {

  /** Time bent forward beyond the first limit of the standard. */
  public static final Phrase BENT_TIME = Phrase.of("bent-trunk time", "workload.bent");

  /** Time bent forward beyond the second limit of the standard. */
  static final Phrase DEEPLY_BENT_TIME =
      Phrase.of("bent-trunk time above 60 degrees", "workload.bent.deep");

  /** What bent-trunk time is. */
  public static final Method BENT_METHOD =
      new Method(
          BENT_TIME,
          Message.of("workload.bent.source"),
          Message.of("workload.bent.range"),
          Message.of("workload.bent.notCovered"));

  private static final Phrase POINTS =
      Phrase.of("hand-arm vibration points", "workload.vibration.points");

  private static final Phrase SAFE =
      Phrase.of("safe up to here, say its authors (from memory)", "workload.rsi.safe");

  private final Load load;
  private final Ratings ratings;
  private final ExposureRules rules;
  private final List<MethodScore> scores = new ArrayList<>();

  private DayScores(Load load, Ratings ratings, ExposureRules rules) {
    this.load = load;
    this.ratings = ratings;
    this.rules = rules;
  }

  /** Scores in a fixed order; a method whose ratings are not given, or without hours, is absent. */
  static List<MethodScore> of(Load load, Ratings ratings, ExposureRules rules) {
    DayScores day = new DayScores(load, ratings, rules);
    day.addStrain();
    day.addVibration();
    day.addNoise();
    day.addBentTime();
    return List.copyOf(day.scores);
  }

  /** All measures that could appear, in the order in which they are listed. */
  static List<Measure> measures(ExposureRules rules) {
    List<Measure> measures = new ArrayList<>();
    for (Task task : Task.values()) {
      measures.add(Measure.of(RevisedStrainIndex.METHOD, task));
      measures.add(Measure.of(CompositeStrainIndex.METHOD, task));
    }
    measures.add(Measure.of(CumulativeStrainIndex.METHOD.name()));
    measures.add(Measure.of(HandArmVibration.NAME));
    measures.add(Measure.of(POINTS));
    rules.noise().forEach(criterion -> measures.add(Measure.of(criterion.method().name())));
    measures.add(Measure.of(BENT_TIME));
    measures.add(Measure.of(DEEPLY_BENT_TIME));
    return measures;
  }

  private void addStrain() {
    List<TaskHours> tasks = new ArrayList<>();
    for (TaskRating rating : worked(rating -> !rating.efforts().isEmpty())) {
      double hours = hours(rating.task());
      tasks.add(new TaskHours(rating.efforts(), hours));
      addTask(rating, hours);
    }
    if (!tasks.isEmpty()) {
      scores.add(
          strain(
              CumulativeStrainIndex.METHOD,
              Measure.of(CumulativeStrainIndex.METHOD.name()),
              CumulativeStrainIndex.of(tasks),
              "rated tasks only: " + names(worked(rating -> !rating.efforts().isEmpty()))));
    }
  }

  private void addTask(TaskRating rating, double hours) {
    boolean composite = rating.efforts().size() > 1;
    Method method = composite ? CompositeStrainIndex.METHOD : RevisedStrainIndex.METHOD;
    Score score =
        composite
            ? CompositeStrainIndex.of(rating.efforts(), hours)
            : RevisedStrainIndex.of(rating.efforts().get(0), hours);
    scores.add(
        strain(
            method,
            Measure.of(method, rating.task()),
            score,
            "own rating over " + hoursBasis(rating.task())));
  }

  private static MethodScore strain(Method method, Measure measure, Score score, String basis) {
    return new MethodScore(
        Subject.STRAIN,
        measure,
        method,
        score,
        Unit.NONE,
        OptionalDouble.of(RevisedStrainIndex.SAFE_UP_TO),
        Optional.of(SAFE),
        basis);
  }

  /** Only tools that vibrate: grinding. Never driving, never a hammer. */
  private void addVibration() {
    TaskRating grind = ratings.of(Task.GRIND);
    double hours = hours(Task.GRIND);
    if (grind.vibration().isEmpty() || hours <= 0) {
      return;
    }
    List<ToolHours> tools = List.of(new ToolHours(grind.vibration().getAsDouble(), hours));
    String basis = "the grinder's rated vibration over " + hoursBasis(Task.GRIND);
    scores.add(
        new MethodScore(
            Subject.VIBRATION,
            Measure.of(HandArmVibration.NAME),
            rules.vibration(),
            HandArmVibration.dailyExposure(tools),
            Unit.ACCELERATION,
            OptionalDouble.of(HandArmVibration.ACTION_VALUE),
            Optional.of(
                Phrase.of("exposure action value; limit value 5", "workload.vibration.limit")),
            basis));
    scores.add(
        new MethodScore(
            Subject.VIBRATION,
            Measure.of(POINTS),
            rules.vibration(),
            HandArmVibration.points(tools),
            Unit.POINTS,
            OptionalDouble.of(100),
            Optional.of(
                Phrase.of(
                    "exposure action value; limit value 400", "workload.vibration.pointsLimit")),
            basis));
  }

  private void addNoise() {
    List<NoiseHours> day = new ArrayList<>();
    List<TaskRating> rated = worked(rating -> rating.noiseDba().isPresent());
    for (TaskRating rating : rated) {
      day.add(new NoiseHours(rating.noiseDba().getAsDouble(), hours(rating.task())));
    }
    if (day.isEmpty()) {
      return;
    }
    for (NoiseCriterion criterion : rules.noise()) {
      scores.add(
          new MethodScore(
              Subject.NOISE,
              Measure.of(criterion.method().name()),
              criterion.method(),
              NoiseDose.of(criterion, day),
              criterion.unit(),
              OptionalDouble.of(criterion.guidance()),
              Optional.of(criterion.guidanceName()),
              "rated tasks only: " + names(rated)));
    }
  }

  private void addBentTime() {
    List<TaskRating> rated = worked(rating -> rating.trunkDegrees().isPresent());
    if (rated.isEmpty()) {
      return;
    }
    String basis = "rated tasks only: " + names(rated);
    double bent = hoursFrom(rated, angle -> angle >= TrunkPosture.LIMITED_FROM_DEGREES);
    double deep = hoursFrom(rated, angle -> angle > TrunkPosture.NOT_RECOMMENDED_ABOVE_DEGREES);
    scores.add(bent(BENT_TIME, bent, basis));
    scores.add(bent(DEEPLY_BENT_TIME, deep, basis));
  }

  private static MethodScore bent(Phrase measure, double hours, String basis) {
    return new MethodScore(
        Subject.POSTURE,
        Measure.of(measure),
        BENT_METHOD,
        Score.of(hours),
        Unit.HOURS,
        OptionalDouble.empty(),
        Optional.empty(),
        basis);
  }

  private double hoursFrom(List<TaskRating> rated, DoublePredicate beyond) {
    return rated.stream()
        .filter(rating -> beyond.test(rating.trunkDegrees().orElseThrow()))
        .mapToDouble(rating -> hours(rating.task()))
        .sum();
  }

  private List<TaskRating> worked(Predicate<TaskRating> rated) {
    return ratings.where(rating -> rated.test(rating) && hours(rating.task()) > 0);
  }

  private double hours(Task task) {
    return load.minutes(Activity.of(task)).hours();
  }

  private String hoursBasis(Task task) {
    return load.minutes(Activity.of(task)).basis().english() + " hours";
  }

  private static String names(List<TaskRating> rated) {
    return String.join(", ", rated.stream().map(rating -> rating.task().word()).toList());
  }
}

package clenchbook.workload.scores;

import clenchbook.workload.hours.WorkDay;
import clenchbook.workload.methods.MethodScore;
import clenchbook.workload.strain.Ratings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What the methods say of a period, measure by measure: every day's score, the worst and the
 * typical one.
 */
public final class YearScores {

  private final Map<LocalDate, List<DayScore>> byDay = new TreeMap<>();
  private final Map<String, List<DayScore>> byMeasure = new LinkedHashMap<>();
  private final Map<String, TreeSet<String>> outOfRange = new LinkedHashMap<>();
  private final List<Summary> summaries;

  /**
   * One score of one day.
   *
   * @param date the day
   * @param score what the method says of it
   */
  public record DayScore(LocalDate date, MethodScore score) {
    public double number() {
      return score.score().number().orElseThrow();
    }
  }

  /**
   * The worst and the typical day by one measure.
   *
   * @param measure the method's name, with the task where it scores one
   * @param days how many days have a score
   * @param typical the middle score of those days
   * @param worst the highest, of equals the earliest
   */
  public record Summary(String measure, int days, double typical, DayScore worst) {}

  /**
   * Scores of a period.
   *
   * @param worked its days, in order
   * @param ratings the farrier's ratings
   * @param rules the country's rules for vibration and noise
   */
  public YearScores(Collection<WorkDay> worked, Ratings ratings, ExposureRules rules) {
    DayScores.measures(rules).forEach(measure -> byMeasure.put(measure, new ArrayList<>()));
    for (WorkDay day : worked) {
      for (MethodScore score : DayScores.of(day.load(), ratings, rules)) {
        add(new DayScore(day.date(), score));
      }
    }
    summaries =
        byMeasure.entrySet().stream()
            .filter(entry -> !entry.getValue().isEmpty())
            .map(entry -> summary(entry.getKey(), entry.getValue()))
            .toList();
  }

  private void add(DayScore day) {
    String measure = day.score().measure();
    if (day.score().score().number().isPresent()) {
      byDay.computeIfAbsent(day.date(), unused -> new ArrayList<>()).add(day);
      byMeasure.computeIfAbsent(measure, unused -> new ArrayList<>()).add(day);
    } else {
      outOfRange.computeIfAbsent(measure, unused -> new TreeSet<>()).add(day.score().score().why());
    }
  }

  /**
   * The scores of a day that could be computed.
   *
   * @param day the day
   * @return in the order of the methods; empty for a day without any
   */
  public List<DayScore> on(LocalDate day) {
    return List.copyOf(byDay.getOrDefault(day, List.of()));
  }

  /**
   * What lay outside a method's range.
   *
   * @return the reasons, each once, by measure; empty when everything could be computed
   */
  public Map<String, String> outOfRange() {
    Map<String, String> reasons = new TreeMap<>();
    outOfRange.forEach((measure, why) -> reasons.put(measure, String.join("; ", why)));
    return reasons;
  }

  /**
   * The worst and typical day by each measure.
   *
   * @return single tasks first, then the sums; measures without a score are left out
   */
  public List<Summary> summaries() {
    return summaries;
  }

  /**
   * The worst and typical day by one measure.
   *
   * @param measure its name
   * @return empty when no day has a score
   */
  public Optional<Summary> find(String measure) {
    return summaries.stream().filter(summary -> summary.measure().equals(measure)).findFirst();
  }

  private static Summary summary(String measure, List<DayScore> scores) {
    DayScore worst =
        scores.stream()
            .max(
                Comparator.comparingDouble(DayScore::number)
                    .thenComparing(DayScore::date, Comparator.reverseOrder()))
            .orElseThrow();
    return new Summary(measure, scores.size(), median(scores), worst);
  }

  private static double median(List<DayScore> scores) {
    double[] sorted = scores.stream().mapToDouble(DayScore::number).sorted().toArray();
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}

package clenchbook.workload.scores;

import clenchbook.workload.hours.Phrase;
import clenchbook.workload.hours.WorkDay;
import clenchbook.workload.methods.Measure;
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
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What the methods say of a period, measure by measure: every day's score, the worst and the
 * typical one.
 */
public final class YearScores {

  private final Map<LocalDate, List<DayScore>> byDay = new TreeMap<>();
  private final Map<Measure, List<DayScore>> byMeasure = new LinkedHashMap<>();
  private final Map<Measure, Set<Phrase>> outOfRange = new LinkedHashMap<>();
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
   * @param measure what is measured
   * @param days how many days have a score
   * @param typical the middle score of those days
   * @param worst the highest, of equals the earliest
   */
  public record Summary(Measure measure, int days, double typical, DayScore worst) {}

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
    Measure measure = day.score().measure();
    if (day.score().score().number().isPresent()) {
      byDay.computeIfAbsent(day.date(), unused -> new ArrayList<>()).add(day);
      byMeasure.computeIfAbsent(measure, unused -> new ArrayList<>()).add(day);
    } else {
      Set<Phrase> reasons = outOfRange.computeIfAbsent(measure, unused -> bySentence());
      day.score().score().why().ifPresent(reasons::add);
    }
  }

  private static Set<Phrase> bySentence() {
    return new TreeSet<>(Comparator.comparing(Phrase::english));
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
  public Map<Measure, Phrase> outOfRange() {
    Map<Measure, Phrase> reasons = new TreeMap<>();
    outOfRange.forEach(
        (measure, why) -> reasons.put(measure, Phrase.joined("; ", List.copyOf(why))));
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
   * @param measure the measure
   * @return empty when no day has a score
   */
  public Optional<Summary> find(Measure measure) {
    return summaries.stream().filter(summary -> summary.measure().equals(measure)).findFirst();
  }

  private static Summary summary(Measure measure, List<DayScore> scores) {
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

package clenchbook.comparison.questions;

import clenchbook.statistics.EffectsModel;
import clenchbook.statistics.Interval;
import clenchbook.statistics.Observation;
import clenchbook.statistics.Side;
import clenchbook.statistics.StratifiedDifference;
import clenchbook.statistics.StratifiedEstimate;
import clenchbook.statistics.StratumEstimate;
import clenchbook.texts.Message;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * One question and measure, answered twice: like with like, and by a least-squares model as a
 * guard.
 *
 * @param question the question
 * @param measure the measure
 * @param jobs how many jobs of the period were looked at
 * @param leftOut how many were left out, by the first reason that applies
 * @param entered the jobs that entered, strata without a counterpart included
 * @param estimate the difference like with like; empty where no stratum has two jobs on each side
 * @param guard the model's answer; empty where it can't tell the sides apart
 */
public record Comparison(
    Question question,
    Measure measure,
    int jobs,
    Map<Exclusion, Integer> leftOut,
    List<Entry> entered,
    Optional<StratifiedEstimate> estimate,
    Optional<EffectsModel.Answer> guard) {

  /**
   * A job that entered.
   *
   * @param job the job
   * @param side which side it is on
   * @param stratum what it is compared with
   * @param effect what has an effect of its own in the model
   * @param value its value
   */
  public record Entry(ComparedJob job, Side side, String stratum, String effect, double value) {
    Observation observation() {
      return new Observation(job.horse(), stratum, side, value);
    }

    private Observation underEffect() {
      return new Observation(job.horse(), effect, side, value);
    }
  }

  /** Copies the list and the map. */
  public Comparison {
    entered = List.copyOf(entered);
    leftOut = ordered(leftOut);
  }

  private static Map<Exclusion, Integer> ordered(Map<Exclusion, Integer> counts) {
    Map<Exclusion, Integer> ordered = new EnumMap<>(Exclusion.class);
    ordered.putAll(counts);
    return Collections.unmodifiableMap(ordered);
  }

  /**
   * Asks the question of the period's jobs.
   *
   * @param jobs jobs that were done, in {@link ComparedJob#ORDER}, sorted by the question
   * @param rates the wages
   */
  public static Comparison of(
      Question question, Measure measure, List<SortedJob> jobs, CompareRates rates) {
    Map<Exclusion, Integer> leftOut = new EnumMap<>(Exclusion.class);
    List<Entry> entered =
        jobs.stream().flatMap(job -> enter(measure, job, rates, leftOut).stream()).toList();
    Optional<StratifiedEstimate> estimate =
        StratifiedDifference.estimate(entered.stream().map(Entry::observation).toList());
    int apart = entered.size() - estimate.map(found -> found.countA() + found.countB()).orElse(0);
    if (apart > 0) {
      leftOut.put(Exclusion.NO_COUNTERPART, apart);
    }
    List<Observation> effects = entered.stream().map(Entry::underEffect).toList();
    return new Comparison(
        question, measure, jobs.size(), leftOut, entered, estimate, EffectsModel.fit(effects));
  }

  private static Optional<Entry> enter(
      Measure measure, SortedJob sorted, CompareRates rates, Map<Exclusion, Integer> leftOut) {
    ComparedJob job = sorted.job();
    Optional<Exclusion> out = sorted.exclusion().or(() -> measure.missing(job));
    if (out.isPresent()) {
      leftOut.merge(out.get(), 1, Integer::sum);
      return Optional.empty();
    }
    return Optional.of(
        new Entry(job, sorted.side(), sorted.stratum(), sorted.effect(), measure.of(job, rates)));
  }

  /** The jobs whose strata the estimate uses. */
  public List<Entry> used() {
    Set<String> strata =
        estimate.stream()
            .flatMap(found -> found.strata().stream())
            .map(StratumEstimate::stratum)
            .collect(Collectors.toSet());
    return entered.stream().filter(entry -> strata.contains(entry.stratum())).toList();
  }

  /** The mean of side B in each used stratum. */
  public Map<String, Double> meansOfB() {
    Map<String, Double> means = new TreeMap<>();
    estimate.stream()
        .flatMap(found -> found.strata().stream())
        .forEach(stratum -> means.put(stratum.stratum(), stratum.b().mean()));
    return means;
  }

  /** The strata's names in files, as the first of their jobs writes them. */
  public Map<String, String> names() {
    Map<String, String> names = new TreeMap<>();
    entered.forEach(entry -> names.putIfAbsent(entry.stratum(), question.stratumName(entry.job())));
    return names;
  }

  /** The strata's names for people, as the first of their jobs writes them. */
  public Map<String, Message> sorts() {
    Map<String, Message> sorts = new TreeMap<>();
    entered.forEach(entry -> sorts.putIfAbsent(entry.stratum(), question.sort(entry.job())));
    return sorts;
  }

  /** The used jobs as observations. */
  public List<Observation> usedObservations() {
    return used().stream().map(Entry::observation).toList();
  }

  /** The wider of the two intervals; empty without variance. */
  public Optional<Interval> wider() {
    return estimate.flatMap(StratifiedEstimate::wider);
  }

  /** What it shows. */
  public Verdict verdict() {
    return Verdict.of(
        estimate.map(StratifiedEstimate::countA).orElse(0),
        estimate.map(StratifiedEstimate::countB).orElse(0),
        wider());
  }

  /** Whether there are jobs enough on both sides for a verdict. */
  public boolean enough() {
    return verdict() != Verdict.NOT_ENOUGH_JOBS;
  }

  /** How the guard's answer stands to the first one. */
  public Agreement agreement() {
    if (estimate.isEmpty() || guard.isEmpty()) {
      return Agreement.NOT_TRIED;
    }
    double first = estimate.get().difference();
    double second = guard.get().difference();
    if (Math.signum(first) != Math.signum(second)) {
      return Agreement.OTHER_SIGN;
    }
    boolean apart =
        wider().isPresent()
            && guard.get().interval().isPresent()
            && !wider().get().meets(guard.get().interval().get());
    return apart ? Agreement.INTERVALS_PART : Agreement.AGREE;
  }

  /** How two answers to one question stand to each other. */
  public enum Agreement {
    /** Same direction, and the intervals meet. */
    AGREE,
    /** One says more, the other less. */
    OTHER_SIGN,
    /** The intervals have nothing in common. */
    INTERVALS_PART,
    /** One of the two could not be made. */
    NOT_TRIED
  }
}

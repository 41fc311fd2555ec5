package clenchbook.workload.strain;

import clenchbook.texts.Message;
import clenchbook.workload.hours.Phrase;
import clenchbook.workload.methods.Method;
import clenchbook.workload.methods.Score;
import java.util.List;
import java.util.Optional;

/**
 * The Composite Strain Index (COSI): several kinds of effort within one task.
 *
 * <p>The efforts stand in falling order of their own index; each later one adds what its efforts a
 * minute add on top of those before it. With one kind of effort it is the Revised Strain Index.
 *
 * <p>Source: Garg, Moore, Kapellusch, The Composite Strain Index (COSI) and Cumulative Strain Index
 * (CUSI), Ergonomics 60(8):1033-1041, 2017, doi 10.1080/00140139.2016.1246675.
 */
public final class CompositeStrainIndex {

  /** What the index is and what it leaves out. */
  public static final Method METHOD =
      new Method(
          Phrase.of("Composite Strain Index (COSI)", "workload.cosi"),
          Message.of("workload.cosi.source"),
          Message.of("workload.cosi.range"),
          RevisedStrainIndex.METHOD.notCovered());

  private CompositeStrainIndex() {}

  /**
   * The index of a task.
   *
   * @param efforts the kinds of effort in it, at least one, in any order
   * @param hours of the day spent on the task
   * @return the index, not rounded, or which input lies outside the range
   * @throws IllegalArgumentException when there is no effort
   */
  public static Score of(List<HandEffort> efforts, double hours) {
    if (efforts.isEmpty()) {
      throw new IllegalArgumentException("a task has at least one kind of effort");
    }
    return faultIn(efforts, hours)
        .<Score>map(Score.OutOfRange::new)
        .orElseGet(() -> Score.of(sum(efforts, hours)));
  }

  private static Optional<Phrase> faultIn(List<HandEffort> efforts, double hours) {
    double busySeconds = 0;
    for (HandEffort effort : efforts) {
      Optional<Phrase> fault = RevisedStrainIndex.faultIn(effort, hours);
      if (fault.isPresent()) {
        return fault;
      }
      busySeconds += effort.effortsPerMinute() * effort.secondsPerEffort();
    }
    return busySeconds > 60
        ? Optional.of(
            Phrase.of("the efforts together do not fit in a minute", "workload.fault.busyTogether"))
        : Optional.empty();
  }

  private static double sum(List<HandEffort> efforts, double hours) {
    List<StackedEfforts.Part> parts =
        efforts.stream()
            .map(
                effort -> {
                  double weight = RevisedStrainIndex.withoutFrequency(effort, hours);
                  double rate = effort.effortsPerMinute();
                  double alone = weight * RevisedStrainIndex.effortsMultiplier(rate);
                  return new StackedEfforts.Part(alone, rate, weight);
                })
            .toList();
    return StackedEfforts.sum(parts, RevisedStrainIndex::effortsMultiplier);
  }
}

package clenchbook.comparison.questions;

import clenchbook.statistics.Side;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A job with its place in a question, found once for all measures.
 *
 * @param job the job
 * @param exclusion why it can't enter; empty where it enters
 * @param side its side; A where it can't enter
 * @param stratum what it is compared with; empty where it can't enter
 * @param effect its effect in the least-squares model; empty where it can't enter
 */
public record SortedJob(
    ComparedJob job, Optional<Exclusion> exclusion, Side side, String stratum, String effect) {

  /** Sorts jobs by a question; jobs of one stratum share its name. */
  public static List<SortedJob> of(Question question, List<ComparedJob> jobs) {
    Map<String, String> known = new HashMap<>();
    return jobs.stream().map(job -> of(question, job, known)).toList();
  }

  private static SortedJob of(Question question, ComparedJob job, Map<String, String> known) {
    Optional<Exclusion> out = question.exclusion(job);
    if (out.isPresent()) {
      return new SortedJob(job, out, Side.A, "", "");
    }
    return new SortedJob(
        job,
        out,
        question.side(job),
        known.computeIfAbsent(question.stratum(job), name -> name),
        known.computeIfAbsent(question.effectName(job), name -> name));
  }
}

package clenchbook.jobs;

import clenchbook.book.Reason;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.texts.Message;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Follows the shoes on each horse, so that no more are lost than were on. All rows of a day are one
 * visit; afterwards those nailed are on, and after a call for a lost shoe what was left besides.
 */
final class LostRules {
  private static final int FEET = 4;

  private final List<Problem> problems = new ArrayList<>();
  private final Map<HorseId, Worn> worn = new HashMap<>();

  /**
   * A horse on a day.
   *
   * @param before shoes on when the visit began
   * @param lost how many were found lost so far
   * @param nailed how many were nailed on so far
   * @param call whether it was a call for a lost shoe
   */
  private record Worn(LocalDate day, int before, int lost, int nailed, boolean call) {
    int after() {
      return nailed + (call ? Math.max(0, before - lost) : 0);
    }
  }

  private LostRules() {}

  /**
   * What is wrong with the losses.
   *
   * @param jobs the book's jobs by date, sheet and row
   */
  static List<Problem> problems(List<Job> jobs) {
    LostRules rules = new LostRules();
    jobs.stream()
        .filter(job -> !job.cancelled() && !job.fee() && !job.horse().name().isEmpty())
        .forEach(rules::follow);
    return rules.problems;
  }

  private void follow(Job job) {
    Worn soFar = soFar(job);
    int before = soFar.before();
    int lost = soFar.lost() + job.visit().lost().orElse(0);
    if (lost > before && job.visit().lost().orElse(0) > 0) {
      say(job, lost, before);
    }
    boolean call = soFar.call() || job.visit().reason() == Reason.LOST_SHOE;
    worn.put(job.horse(), new Worn(job.date(), before, lost, soFar.nailed() + job.shoes(), call));
  }

  /** The horse as this day's earlier rows left it, else as its last visit did. */
  private Worn soFar(Job job) {
    Optional<Worn> known = Optional.ofNullable(worn.get(job.horse()));
    int before = known.map(Worn::after).orElse(FEET);
    return known
        .filter(last -> last.day().equals(job.date()))
        .orElseGet(() -> new Worn(job.date(), before, 0, 0, false));
  }

  private void say(Job job, int lost, int before) {
    problems.add(
        Problem.warning(
            ProblemKind.LOST_ABOVE_SHOES,
            job.visit().source().at("Lost"),
            Message.of("jobs.lost.aboveShoes", lost, before),
            Message.of("jobs.lost.atMost", before),
            job.visit().lost().map(String::valueOf).orElse("")));
  }
}

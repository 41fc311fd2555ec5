package clenchbook.comparison.pricing;

import clenchbook.book.Reason;
import clenchbook.comparison.questions.ComparedJob;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Finds callbacks and carries them back to the row that put the shoes on. */
final class Callbacks {

  private Callbacks() {}

  /**
   * The callbacks of a period.
   *
   * @param jobs all of the book's jobs, earlier ones included, in {@link ComparedJob#ORDER}
   * @param from first day of the period, inclusive
   * @param to last day, inclusive
   * @param days a callback comes at most so many days after the visit that caused it
   * @return in {@link ComparedJob#ORDER}
   */
  static List<Callback> find(List<ComparedJob> jobs, LocalDate from, LocalDate to, int days) {
    Map<String, List<ComparedJob>> shod = new TreeMap<>();
    List<Callback> found = new ArrayList<>();
    for (ComparedJob job : jobs) {
      if (!job.done() || job.date().isAfter(to)) {
        continue;
      }
      List<ComparedJob> earlier = shod.computeIfAbsent(job.horse(), horse -> new ArrayList<>());
      if (freeOrLost(job) && !job.date().isBefore(from)) {
        cause(earlier, job, days).ifPresent(found::add);
      }
      if (job.shoes() > 0 && !freeOrLost(job)) {
        earlier.add(job);
      }
    }
    return found;
  }

  private static boolean freeOrLost(ComparedJob job) {
    return job.reason() == Reason.LOST_SHOE || job.money().charged().signum() == 0;
  }

  /** Of the latest earlier day's rows the one with most shoes, the first of equals. */
  private static Optional<Callback> cause(List<ComparedJob> earlier, ComparedJob job, int days) {
    Optional<ComparedJob> best = Optional.empty();
    for (int i = earlier.size() - 1; i >= 0; i--) {
      ComparedJob before = earlier.get(i);
      if (before.date().isBefore(job.date())) {
        if (best.isPresent() && before.date().isBefore(best.get().date())) {
          break;
        }
        if (best.isEmpty() || before.shoes() >= best.get().shoes()) {
          best = Optional.of(before);
        }
      }
    }
    return best.map(before -> new Callback(job, before, between(before, job)))
        .filter(callback -> callback.days() <= days);
  }

  private static long between(ComparedJob before, ComparedJob after) {
    return ChronoUnit.DAYS.between(before.date(), after.date());
  }
}

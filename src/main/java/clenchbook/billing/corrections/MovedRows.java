package clenchbook.billing.corrections;

import clenchbook.billing.corrections.BilledVisits.Live;
import clenchbook.billing.documents.VisitKey;
import clenchbook.book.Names;
import clenchbook.jobs.Job;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Finds the row that a billed visit has become when its date, Work or horse was mended after the
 * invoice went out: otherwise one visit would be taken back and the other billed as if it were new.
 *
 * <p>A row counts as moved when nothing bears it and it has, in this order of preference, the same
 * horse and Work within 31 days, the same date and horse, or the same date, Work and payer.
 */
final class MovedRows {
  private static final long MOST_DAYS = 31;

  private final Map<VisitKey, Job> moved = new HashMap<>();
  private final Set<VisitKey> taken = new HashSet<>();

  MovedRows(Map<VisitKey, List<Live>> missing, Collection<Job> unborne) {
    List<VisitKey> keys = new ArrayList<>(missing.keySet());
    keys.sort(
        Comparator.comparing(VisitKey::date)
            .thenComparing(VisitKey::horse)
            .thenComparing(VisitKey::work)
            .thenComparingInt(VisitKey::occurrence));
    keys.forEach(key -> match(key, unborne, job -> sameHorseAndWork(key, job)));
    keys.forEach(key -> match(key, unborne, job -> sameDayAndHorse(key, job)));
    keys.forEach(key -> match(key, unborne, job -> sameDayWorkAndPayer(key, job, missing)));
  }

  private void match(VisitKey key, Collection<Job> unborne, Predicate<Job> alike) {
    if (moved.containsKey(key)) {
      return;
    }
    unborne.stream()
        .filter(job -> !taken.contains(VisitKey.of(job)))
        .filter(alike)
        .min(Comparator.comparingLong((Job job) -> days(key, job)).thenComparing(Job.ORDER))
        .ifPresent(
            job -> {
              moved.put(key, job);
              taken.add(VisitKey.of(job));
            });
  }

  private static long days(VisitKey key, Job job) {
    return Math.abs(ChronoUnit.DAYS.between(key.date(), job.date()));
  }

  private static boolean sameHorseAndWork(VisitKey key, Job job) {
    VisitKey other = VisitKey.of(job);
    return key.horse().equals(other.horse())
        && key.work().equals(other.work())
        && days(key, job) <= MOST_DAYS;
  }

  private static boolean sameDayAndHorse(VisitKey key, Job job) {
    return key.date().equals(job.date()) && key.horse().equals(VisitKey.of(job).horse());
  }

  private static boolean sameDayWorkAndPayer(
      VisitKey key, Job job, Map<VisitKey, List<Live>> missing) {
    boolean payer =
        job.payers().stream()
            .anyMatch(
                one ->
                    missing.getOrDefault(key, List.of()).stream()
                        .anyMatch(live -> Names.same(live.invoice().owner(), one.name())));
    return payer && key.date().equals(job.date()) && key.work().equals(VisitKey.of(job).work());
  }

  /** The job that a billed visit has become. */
  Optional<Job> of(VisitKey visit) {
    return Optional.ofNullable(moved.get(visit));
  }

  /** The rows that others have become. */
  Set<VisitKey> taken() {
    return taken;
  }
}

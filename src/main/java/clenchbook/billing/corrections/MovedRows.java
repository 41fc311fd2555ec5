package clenchbook.billing.corrections;

import clenchbook.billing.corrections.BilledVisits.Bearing;
import clenchbook.billing.documents.LineMaker;
import clenchbook.billing.documents.VisitKey;
import clenchbook.book.Names;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.Job;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Finds the row that a billed visit has become when its date, Work or horse was put right after the
 * invoice went out: otherwise one visit would be taken back and the other billed as if it were new.
 *
 * <p>A row counts as moved when no document names it, one who is billed for the visit pays for it
 * too, and it has, in this order of preference, the same horse and Work within 31 days, the same
 * date and horse, or the same date and Work; of each, one that is charged alike comes first.
 */
final class MovedRows {
  private static final long MOST_DAYS = 31;

  private final BookIndex index;
  private final Map<VisitKey, Job> moved = new HashMap<>();
  private final Set<Job> taken = Collections.newSetFromMap(new IdentityHashMap<>());

  /**
   * @param missing billed visits without a row, with the invoices that bill them
   * @param unknown rows that no document names, in order
   */
  MovedRows(BookIndex index, Map<VisitKey, List<Bearing>> missing, Collection<Job> unknown) {
    this.index = index;
    if (missing.isEmpty() || unknown.isEmpty()) {
      return;
    }
    List<VisitKey> visits = new ArrayList<>(missing.keySet());
    visits.sort(
        Comparator.comparing(VisitKey::date)
            .thenComparing(VisitKey::horse)
            .thenComparing(VisitKey::work)
            .thenComparing(VisitKey::owner)
            .thenComparingInt(VisitKey::occurrence));
    List<Predicate<Pair>> likenesses =
        List.of(
            pair -> pair.otherDay() && pair.sameOwn(),
            pair -> pair.otherWork() && pair.sameOwn(),
            Pair::otherDay,
            Pair::otherWork,
            pair -> pair.otherHorse() && pair.sameOwn(),
            Pair::otherHorse);
    for (Predicate<Pair> likeness : likenesses) {
      visits.forEach(
          visit -> find(visit, missing.getOrDefault(visit, List.of()), unknown, likeness));
    }
  }

  /** A visit as billed, by what decided its charge, and a row that it may have become. */
  private record Pair(VisitKey visit, String own, Job job) {
    private boolean sameHorse() {
      return visit.horse().equals(Names.key(job.visit().horse()));
    }

    private boolean sameWork() {
      return visit.work().equals(Names.key(job.visit().work()));
    }

    boolean sameOwn() {
      return own.equals(LineMaker.own(job));
    }

    boolean otherDay() {
      return sameHorse() && sameWork() && days() <= MOST_DAYS;
    }

    boolean otherWork() {
      return days() == 0 && sameHorse();
    }

    boolean otherHorse() {
      return days() == 0 && sameWork();
    }

    long days() {
      return Math.abs(ChronoUnit.DAYS.between(visit.date(), job.date()));
    }
  }

  private void find(
      VisitKey visit, List<Bearing> bearings, Collection<Job> unknown, Predicate<Pair> likeness) {
    if (moved.containsKey(visit)) {
      return;
    }
    String own = bearings.get(0).lines().get(0).own();
    unknown.stream()
        .filter(job -> !taken.contains(job))
        .map(job -> new Pair(visit, own, job))
        .filter(likeness)
        .filter(pair -> samePayer(bearings, pair.job()))
        .min(Comparator.comparingLong(Pair::days).thenComparing(Pair::job, Job.ORDER))
        .ifPresent(
            pair -> {
              moved.put(visit, pair.job());
              taken.add(pair.job());
            });
  }

  private boolean samePayer(List<Bearing> bearings, Job job) {
    return job.payers().stream()
        .anyMatch(
            payer ->
                bearings.stream()
                    .map(bearing -> index.ownerName(bearing.invoice().owner()))
                    .anyMatch(owner -> Names.same(owner, payer.name())));
  }

  /** The job that a billed visit has become. */
  Optional<Job> of(VisitKey visit) {
    return Optional.ofNullable(moved.get(visit));
  }

  /** Whether a row is what a billed visit has become. */
  boolean taken(Job job) {
    return taken.contains(job);
  }
}

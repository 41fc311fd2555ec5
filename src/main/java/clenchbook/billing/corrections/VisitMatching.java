package clenchbook.billing.corrections;

import clenchbook.billing.corrections.BilledVisits.Bearing;
import clenchbook.billing.documents.LineMaker;
import clenchbook.billing.documents.VisitKey;
import clenchbook.book.HorseRow;
import clenchbook.book.Names;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.Horse;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which row of the book each visit on a document is, and the key under which each row stands on
 * documents. Rows of one date, horse and Work are told apart by owner, then by what in them decides
 * the charge, then by their order, so that deleting or moving one of them is not taken for a change
 * of another.
 */
public final class VisitMatching {
  private final BookIndex index;
  private final Map<VisitKey, Job> rows = new HashMap<>();
  private final Map<Job, VisitKey> keys = new IdentityHashMap<>();
  private final Set<Job> known = java.util.Collections.newSetFromMap(new IdentityHashMap<>());
  private final Set<VisitKey> doubtful = new HashSet<>();

  /** What rows of one kind have in common. */
  private record Alike(LocalDate date, String horse, String work) {
    static Alike of(VisitKey key) {
      return new Alike(key.date(), key.horse(), key.work());
    }
  }

  /** A row with the key it has by itself. */
  private record Row(Job job, VisitKey key) {}

  /** A visit on documents. */
  private record Billed(VisitKey key, String owner, String own, Set<String> payers) {}

  /** How much alike a row and a visit on documents have to be; the likest are paired first. */
  private interface Likeness {
    boolean holds(Billed billed, Row row);

    default Likeness and(Likeness other) {
      return (billed, row) -> holds(billed, row) && other.holds(billed, row);
    }
  }

  private VisitMatching(Jobs jobs, BilledVisits billed) {
    index = jobs.index();
    Map<Alike, List<Billed>> onDocuments = new LinkedHashMap<>();
    for (VisitKey visit : billed.visits()) {
      onDocuments
          .computeIfAbsent(Alike.of(visit), unused -> new ArrayList<>())
          .add(billed(visit, billed.all(visit)));
    }
    Map<VisitKey, Integer> times = new HashMap<>();
    Map<Alike, List<Row>> groups = new LinkedHashMap<>();
    for (Job job : jobs.all()) {
      if (!job.cancelled()) {
        VisitKey first = VisitKey.of(job, 1);
        Row row = new Row(job, first.at(times.merge(first, 1, Integer::sum)));
        groups.computeIfAbsent(Alike.of(first), unused -> new ArrayList<>()).add(row);
      }
    }
    groups.forEach((alike, group) -> pair(onDocuments.getOrDefault(alike, List.of()), group));
  }

  /**
   * Pairs rows and documents.
   *
   * @param jobs the book's jobs
   * @param billed the visits on documents
   * @return which is which
   */
  public static VisitMatching of(Jobs jobs, BilledVisits billed) {
    return new VisitMatching(jobs, billed);
  }

  private Billed billed(VisitKey visit, List<Bearing> bearings) {
    Set<String> payers = new HashSet<>();
    bearings.forEach(bearing -> payers.add(owner(bearing.invoice().owner())));
    return new Billed(visit, owner(visit.owner()), bearings.get(0).lines().get(0).own(), payers);
  }

  private String owner(String name) {
    return Names.key(index.ownerName(name));
  }

  private void pair(List<Billed> billed, List<Row> rows) {
    Set<VisitKey> taken = new HashSet<>();
    billed.forEach(each -> taken.add(each.key()));
    for (Likeness likeness : billed.isEmpty() ? List.<Likeness>of() : likenesses()) {
      for (Billed each : billed) {
        if (!this.rows.containsKey(each.key())) {
          rows.stream()
              .filter(row -> !known.contains(row.job()) && likeness.holds(each, row))
              .findFirst()
              .ifPresent(row -> same(each.key(), row.job()));
        }
      }
    }
    rows.stream().filter(row -> !known.contains(row.job())).forEach(row -> fresh(row, taken));
    billed.stream().filter(each -> beside(each, billed)).forEach(each -> doubtful.add(each.key()));
  }

  /** Whether a visit of the same payer, alike but for its charge, has no row. */
  private boolean beside(Billed each, List<Billed> billed) {
    return billed.stream()
        .filter(other -> !rows.containsKey(other.key()))
        .anyMatch(other -> other.payers().stream().anyMatch(each.payers()::contains));
  }

  private void same(VisitKey visit, Job job) {
    rows.put(visit, job);
    keys.put(job, visit);
    known.add(job);
  }

  /** A row that no document names gets the first key of its kind that none bears. */
  private void fresh(Row row, Set<VisitKey> taken) {
    int occurrence = 1;
    while (!taken.add(row.key().at(occurrence))) {
      occurrence++;
    }
    keys.put(row.job(), row.key().at(occurrence));
  }

  /**
   * Who is billed says more than the Owner of the row that was billed once: it may have changed.
   */
  private List<Likeness> likenesses() {
    Likeness owner = this::sameOwner;
    Likeness payer = this::samePayer;
    Likeness own = VisitMatching::sameOwn;
    Likeness order = VisitMatching::sameOrder;
    Likeness horse = (billed, row) -> sameHorse(billed, row.job());
    return List.of(
        owner.and(payer).and(own).and(order),
        owner.and(payer).and(own),
        payer.and(own),
        owner.and(own),
        owner.and(payer).and(order),
        owner.and(payer),
        payer,
        owner.and(order),
        owner,
        horse.and(own),
        horse);
  }

  private boolean sameOwner(Billed billed, Row row) {
    return billed.owner().equals(owner(row.key().owner()));
  }

  private static boolean sameOwn(Billed billed, Row row) {
    return billed.own().equals(LineMaker.own(row.job()));
  }

  private static boolean sameOrder(Billed billed, Row row) {
    return billed.key().occurrence() == row.key().occurrence();
  }

  private boolean samePayer(Billed billed, Row row) {
    return sameHorse(billed, row.job())
        && row.job().payers().stream()
            .anyMatch(payer -> billed.payers().contains(owner(payer.name())));
  }

  /** False where the owner on the document has another horse of that name. */
  private boolean sameHorse(Billed billed, Job job) {
    List<Horse> horses = index.horses().named(job.visit().horse());
    if (horses.size() < 2) {
      return true;
    }
    return horses.stream()
        .filter(horse -> horse.rows().stream().anyMatch(row -> isOf(row, billed)))
        .findFirst()
        .map(horse -> owner(horse.id().owner()).equals(owner(job.horse().owner())))
        .orElse(true);
  }

  private boolean isOf(HorseRow row, Billed billed) {
    return billed.owner().isEmpty()
        ? billed.payers().contains(owner(row.owner()))
            || billed.payers().contains(owner(row.billTo()))
        : billed.owner().equals(owner(row.owner())) || billed.owner().equals(owner(row.billTo()));
  }

  /**
   * The row that a visit on documents is.
   *
   * @param visit the visit
   * @return its row; empty when no row of its date, horse and Work is it
   */
  public Optional<Job> row(VisitKey visit) {
    return Optional.ofNullable(rows.get(visit));
  }

  /**
   * Whether a changed row may as well be another visit's: one of the same day, horse, Work and
   * payer has no row.
   *
   * @param visit the visit
   * @return true where rows held back may be the visit's own, or it has no row itself
   */
  public boolean doubtful(VisitKey visit) {
    return doubtful.contains(visit) || row(visit).isEmpty();
  }

  /**
   * The key of a row on documents: the one that a document knows it by, else its own.
   *
   * @param job an uncancelled job of the book
   * @return its key
   */
  public VisitKey key(Job job) {
    return Optional.ofNullable(keys.get(job)).orElseGet(() -> VisitKey.of(job, 1));
  }

  /**
   * Whether a document names the row.
   *
   * @param job a job of the book
   * @return true when one does
   */
  public boolean known(Job job) {
    return known.contains(job);
  }
}

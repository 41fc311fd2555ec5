package clenchbook.billing.corrections;

import clenchbook.billing.corrections.BilledVisits.Bearing;
import clenchbook.billing.corrections.Difference.Changed;
import clenchbook.billing.corrections.Difference.What;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.LineMaker;
import clenchbook.billing.documents.VisitKey;
import clenchbook.book.Names;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Compares issued documents, net of issued credit notes, with the book: what changed in a visit's
 * own row is taken back and billed anew when a later month is run or when it is asked for; other
 * changes are only listed. Nothing is done about a visit that a draft of another month names.
 */
public final class Corrections {
  private final Jobs jobs;
  private final BookIndex index;
  private final BilledVisits billed;
  private final VisitMatching matching;
  private final LineMaker maker;
  private final BillingOptions options;
  private final VisitChange.Rules rules;
  private final MovedRows moved;
  private final Set<VisitKey> cancelled = new HashSet<>();
  private final Map<String, Set<VisitKey>> drafted;
  private final List<Difference> differences = new ArrayList<>();
  private final Map<Job, String> rebilled = new IdentityHashMap<>();
  private final Map<Job, Set<String>> rest = new IdentityHashMap<>();
  private final Map<String, Credit> credits = new TreeMap<>();

  /** Lines that a credit note takes back from one invoice. */
  public record Credit(BilledDocument invoice, List<DocumentLine> lines) {}

  /**
   * @param drafted the visits that credit notes drafted in this month already take back, by the
   *     number of their invoice: a correction that was asked for stays, and asks for no other
   */
  public Corrections(
      Jobs jobs,
      BilledVisits billed,
      VisitMatching matching,
      LineMaker maker,
      BillingOptions options,
      Map<String, Set<VisitKey>> drafted) {
    this.jobs = jobs;
    index = jobs.index();
    this.billed = billed;
    this.matching = matching;
    this.maker = maker;
    this.options = options;
    rules = new VisitChange.Rules(maker, index::ownerName);
    this.drafted = Map.copyOf(drafted);
    jobs.all().stream().filter(Job::cancelled).forEach(job -> cancelled.add(VisitKey.of(job, 1)));
    moved = new MovedRows(index, missing(), unknown(jobs));
    billed.visits().forEach(this::compare);
  }

  /**
   * Billed visits without a row. What has become of one that a draft of another month names is
   * found too, lest it be billed here as if it were new.
   */
  private Map<VisitKey, List<Bearing>> missing() {
    Map<VisitKey, List<Bearing>> missing = new LinkedHashMap<>();
    for (VisitKey visit : billed.visits()) {
      if (matching.row(visit).isEmpty() && !billed.of(visit).isEmpty()) {
        missing.put(visit, billed.of(visit));
      }
    }
    return missing;
  }

  private List<Job> unknown(Jobs jobs) {
    return jobs.all().stream()
        .filter(job -> !job.cancelled() && !matching.known(job))
        .sorted(Job.ORDER)
        .toList();
  }

  private void compare(VisitKey visit) {
    List<Bearing> bearings = billed.of(visit);
    if (bearings.isEmpty()) {
      return;
    }
    Optional<Job> row = row(visit);
    List<Bearing> kept = onePerPayer(bearings, row);
    if (kept.size() < bearings.size()) {
      twice(bearings, kept);
    }
    VisitChange change = rules.of(visit, kept, row, cancelled.contains(current(visit)));
    if (!change.own().isEmpty()) {
      changed(change);
      return;
    }
    if (!change.others().isEmpty()) {
      kept.forEach(bearing -> report(Difference.Kind.LISTED, bearing, row, change.others()));
    }
    if (billed.reserved(visit).isEmpty()) {
      row.ifPresent(job -> rest.put(job, UnbilledVisits.rest(jobs, job, kept)));
    }
  }

  private Optional<Job> row(VisitKey visit) {
    return matching
        .row(visit)
        .or(() -> moved.of(visit))
        .or(() -> billed.redrafted(visit).flatMap(matching::row));
  }

  /** The first key of its kind, with the owner as they are called now. */
  private VisitKey current(VisitKey visit) {
    return new VisitKey(
        visit.date(), visit.horse(), visit.work(), Names.key(index.ownerName(visit.owner())), 1);
  }

  /** Of two invoices that bill one payer for one visit, the one that says what the row says. */
  private List<Bearing> onePerPayer(List<Bearing> bearings, Optional<Job> row) {
    Map<String, Bearing> kept = new LinkedHashMap<>();
    for (Bearing bearing : bearings) {
      kept.merge(
          Names.key(index.ownerName(bearing.invoice().owner())),
          bearing,
          (one, other) -> saysTheRow(other, row) || !saysTheRow(one, row) ? other : one);
    }
    return List.copyOf(kept.values());
  }

  private static boolean saysTheRow(Bearing bearing, Optional<Job> row) {
    return row.map(LineMaker::own).filter(bearing.lines().get(0).own()::equals).isPresent();
  }

  private void twice(List<Bearing> bearings, List<Bearing> kept) {
    for (Bearing bearing : bearings) {
      if (!kept.contains(bearing)) {
        List<Changed> changes = List.of(new Changed(What.TWICE, numbers(kept), ""));
        boolean now = takenBackNow(List.of(bearing)) && billed.reserved(bearing.visit()).isEmpty();
        report(
            now ? Difference.Kind.CORRECTED : waiting(bearing), bearing, Optional.empty(), changes);
        if (now) {
          credit(bearing);
        }
      }
    }
  }

  private static String numbers(List<Bearing> bearings) {
    return String.join(", ", bearings.stream().map(each -> each.invoice().number()).toList());
  }

  private void changed(VisitChange change) {
    Difference.Kind kind = kindOf(change);
    change
        .bearings()
        .forEach(
            bearing -> {
              report(kind, bearing, change.row(), change.own());
              if (kind == Difference.Kind.CORRECTED) {
                credit(bearing);
              }
            });
    boolean later =
        change.row().filter(job -> job.date().isAfter(options.month().atEndOfMonth())).isPresent();
    if (kind == Difference.Kind.CORRECTED && !later) {
      change.row().ifPresent(job -> rebilled.put(job, before(change.visit(), job)));
    }
  }

  private String before(VisitKey visit, Job job) {
    return matching.key(job).equals(visit) ? "" : visit.line();
  }

  private Difference.Kind kindOf(VisitChange change) {
    // A row found by likeness alone may be another visit while the visit's own is held back.
    if (options.rowsHeld() && matching.doubtful(change.visit())) {
      return Difference.Kind.MAY_BE_HELD;
    }
    if (!billed.reserved(change.visit()).isEmpty()) {
      return Difference.Kind.ON_DRAFT;
    }
    return takenBackNow(change.bearings()) ? Difference.Kind.CORRECTED : Difference.Kind.TO_CORRECT;
  }

  private Difference.Kind waiting(Bearing bearing) {
    return billed.reserved(bearing.visit()).isEmpty()
        ? Difference.Kind.TO_CORRECT
        : Difference.Kind.ON_DRAFT;
  }

  /** A credit note is never dated before its invoice. */
  private boolean takenBackNow(List<Bearing> bearings) {
    boolean before =
        bearings.stream().anyMatch(bearing -> bearing.invoice().month().isAfter(options.month()));
    return !before
        && bearings.stream()
            .anyMatch(
                bearing ->
                    bearing.invoice().month().isBefore(options.month()) || askedFor(bearing));
  }

  private boolean askedFor(Bearing bearing) {
    String number = bearing.invoice().number();
    return options.correct().filter(asked -> Names.same(asked, number)).isPresent()
        || drafted.getOrDefault(number, Set.of()).contains(bearing.visit());
  }

  private void credit(Bearing bearing) {
    Credit credit =
        credits.computeIfAbsent(
            bearing.invoice().number(), unused -> new Credit(bearing.invoice(), new ArrayList<>()));
    bearing.lines().forEach(line -> credit.lines().add(line.takenBack()));
  }

  private BigDecimal charged(Optional<Job> job, Bearing bearing) {
    return job
        .map(maker::byPayer)
        .map(lines -> lines.getOrDefault(index.ownerName(bearing.invoice().owner()), List.of()))
        .orElse(List.of())
        .stream()
        .map(DocumentLine::amount)
        .reduce(maker.unit().zero(), BigDecimal::add);
  }

  private void report(
      Difference.Kind kind, Bearing bearing, Optional<Job> row, List<Changed> changes) {
    DocumentLine line = bearing.lines().get(0);
    differences.add(
        new Difference(
            kind,
            bearing.invoice().number(),
            bearing.invoice().month(),
            bearing.invoice().owner(),
            bearing.visit(),
            line.horse(),
            line.work(),
            VisitChange.amount(List.of(bearing)),
            charged(row, bearing),
            changes));
  }

  /** Where documents and book differ, by number and visit. */
  public List<Difference> differences() {
    return differences.stream()
        .sorted(
            Comparator.comparing(Difference::number)
                .thenComparing(difference -> difference.visit().date())
                .thenComparing(difference -> difference.visit().horse())
                .thenComparing(difference -> difference.visit().work())
                .thenComparing(difference -> difference.visit().owner())
                .thenComparing(difference -> difference.visit().occurrence()))
        .toList();
  }

  /** Whether the row is another billed visit's, changed: it is not billed as if it were new. */
  public boolean isMoved(Job job) {
    return moved.taken(job);
  }

  /** The jobs whose new lines stand on the month's invoices. */
  public List<Job> jobs() {
    return rebilled.keySet().stream().sorted(Job.ORDER).toList();
  }

  /** The visit that a rebilled job was billed as, for a register; empty for a new one. */
  public String formerly(Job job) {
    return rebilled.getOrDefault(job, "");
  }

  /** The payers of a billed visit that are still to be billed; empty when all are. */
  public Set<String> rest(Job job) {
    return rest.getOrDefault(job, Set.of());
  }

  /** What credit notes take back, by owner and number. */
  public List<Credit> credits() {
    return credits.values().stream()
        .sorted(
            Comparator.comparing((Credit credit) -> credit.invoice().owner(), Names.ORDER)
                .thenComparing(credit -> credit.invoice().number()))
        .toList();
  }
}

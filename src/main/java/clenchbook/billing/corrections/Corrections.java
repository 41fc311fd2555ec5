package clenchbook.billing.corrections;

import clenchbook.billing.corrections.BilledVisits.Live;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.LineMaker;
import clenchbook.billing.documents.VisitKey;
import clenchbook.book.Names;
import clenchbook.jobs.Job;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Compares issued documents, net of credits, with the book: what changed in a visit's own row is
 * taken back and billed anew when a later month is run or when it is asked for; other changes are
 * only listed.
 */
public final class Corrections {
  private final LineMaker maker;
  private final BillingOptions options;
  private final Map<VisitKey, Job> byKey = new HashMap<>();
  private final List<Difference> differences = new ArrayList<>();
  private final List<Job> rebill = new ArrayList<>();
  private final Set<VisitKey> rebilled = new HashSet<>();
  private final MovedRows moved;
  private final Map<String, Credit> credits = new TreeMap<>();

  /** Lines that a credit note takes back from one invoice. */
  public record Credit(BilledDocument invoice, List<DocumentLine> lines) {}

  /** The corrections that the book's jobs ask of the documents so far. */
  public Corrections(List<Job> jobs, BilledVisits borne, LineMaker maker, BillingOptions options) {
    this.maker = maker;
    this.options = options;
    jobs.stream().filter(job -> !job.cancelled()).forEach(job -> byKey.put(VisitKey.of(job), job));
    Map<VisitKey, List<Live>> issued = new LinkedHashMap<>();
    for (VisitKey visit : borne.visits()) {
      List<Live> live = borne.live(visit);
      if (!live.isEmpty() && live.stream().allMatch(entry -> entry.invoice().state().fixed())) {
        issued.put(visit, live);
      }
    }
    Map<VisitKey, List<Live>> missing = missing(issued);
    // Only a line that lost its row looks for one that none bears.
    moved = new MovedRows(missing, missing.isEmpty() ? List.of() : unborne(borne));
    rebilled.addAll(moved.taken());
    issued.forEach(this::compare);
  }

  private Map<VisitKey, List<Live>> missing(Map<VisitKey, List<Live>> issued) {
    Map<VisitKey, List<Live>> missing = new LinkedHashMap<>(issued);
    missing.keySet().removeAll(byKey.keySet());
    return missing;
  }

  private List<Job> unborne(BilledVisits borne) {
    return byKey.entrySet().stream()
        .filter(entry -> !borne.bears(entry.getKey()))
        .map(Map.Entry::getValue)
        .sorted(Job.ORDER)
        .toList();
  }

  private void compare(VisitKey visit, List<Live> live) {
    Optional<Job> became = moved.of(visit);
    Optional<Job> job = Optional.ofNullable(byKey.get(visit)).or(() -> became);
    BigDecimal billed = billed(live);
    BigDecimal now = job.map(maker::charged).orElseGet(() -> maker.unit().zero());
    boolean ownChanged =
        became.isPresent()
            || job.map(found -> !live.get(0).lines().get(0).own().equals(LineMaker.own(found)))
                .orElse(true);
    boolean rowChanged = job.isEmpty() || became.isPresent() || billed.compareTo(now) != 0;
    if (ownChanged && rowChanged) {
      changed(visit, live, job, now);
    } else if (billed.compareTo(now) != 0 || job.filter(j -> otherPayers(j, live)).isPresent()) {
      live.forEach(entry -> report(Difference.Kind.LISTED, entry, charged(job, entry)));
    }
  }

  private static BigDecimal billed(List<Live> live) {
    return live.stream()
        .flatMap(entry -> entry.lines().stream())
        .map(DocumentLine::amount)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static boolean otherPayers(Job job, List<Live> live) {
    Set<String> now = new HashSet<>();
    job.payers().forEach(payer -> now.add(Names.key(payer.name())));
    Set<String> then = new HashSet<>();
    live.forEach(entry -> then.add(Names.key(entry.invoice().owner())));
    return !now.equals(then);
  }

  private void changed(VisitKey visit, List<Live> live, Optional<Job> job, BigDecimal now) {
    if (job.isEmpty() && options.rowsHeld()) {
      live.forEach(entry -> report(Difference.Kind.MAY_BE_HELD, entry, now));
      return;
    }
    if (live.stream().noneMatch(this::takenBackNow)) {
      live.forEach(entry -> report(Difference.Kind.TO_CORRECT, entry, charged(job, entry)));
      return;
    }
    live.forEach(
        entry -> {
          report(Difference.Kind.CORRECTED, entry, charged(job, entry));
          credit(entry);
        });
    rebilled.add(visit);
    job.ifPresent(rebill::add);
  }

  private boolean takenBackNow(Live entry) {
    return entry.invoice().month().isBefore(options.month())
        || options.correct().filter(n -> Names.same(n, entry.invoice().number())).isPresent();
  }

  private void credit(Live entry) {
    Credit credit =
        credits.computeIfAbsent(
            entry.invoice().number(), unused -> new Credit(entry.invoice(), new ArrayList<>()));
    entry.lines().forEach(line -> credit.lines().add(line.takenBack()));
  }

  private BigDecimal charged(Optional<Job> job, Live entry) {
    return job
        .map(found -> maker.byPayer(found))
        .map(lines -> lines.getOrDefault(entry.invoice().owner(), List.of()))
        .orElse(List.of())
        .stream()
        .map(DocumentLine::amount)
        .reduce(maker.unit().zero(), BigDecimal::add);
  }

  private void report(Difference.Kind kind, Live entry, BigDecimal now) {
    DocumentLine line = entry.lines().get(0);
    differences.add(
        new Difference(
            kind,
            entry.invoice().number(),
            entry.invoice().owner(),
            entry.visit(),
            line.horse(),
            line.work(),
            billed(List.of(entry)),
            now));
  }

  /**
   * What differs between the documents and the book, by number and visit; empty where nothing does.
   */
  public List<Difference> differences() {
    return differences.stream()
        .sorted(
            Comparator.comparing(Difference::number)
                .thenComparing(difference -> difference.visit().date())
                .thenComparing(difference -> difference.visit().horse())
                .thenComparing(difference -> difference.visit().work())
                .thenComparing(difference -> difference.visit().occurrence()))
        .toList();
  }

  /** Visits that are taken back and billed anew, or taken back for good. */
  public Set<VisitKey> rebilled() {
    return rebilled;
  }

  /** The jobs whose new lines stand on the month's invoices. */
  public List<Job> jobs() {
    return rebill;
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

package clenchbook.billing;

import clenchbook.billing.corrections.BilledVisits;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.corrections.Corrections;
import clenchbook.billing.corrections.VisitMatching;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.DocumentState;
import clenchbook.billing.documents.LineMaker;
import clenchbook.billing.documents.VisitKey;
import clenchbook.billing.numbering.BegunNumbers;
import clenchbook.billing.numbering.NumberPattern;
import clenchbook.book.Names;
import clenchbook.book.Owner;
import clenchbook.book.Payment;
import clenchbook.book.Setting;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Decides a month's documents over the register's state: drafts are made anew under their own
 * numbers, issued ones stand, what changed in a visit's own row is taken back by credit notes. What
 * is billed is known for each visit and payer, from issued documents alone.
 */
public final class MonthBilling {
  /** Documents in the order they were numbered. */
  public static final Comparator<BilledDocument> ORDER =
      Comparator.comparing(BilledDocument::series)
          .thenComparingInt(BilledDocument::sequence)
          .thenComparing(BilledDocument::number);

  private static final Comparator<BilledDocument> BY_DATE =
      Comparator.comparing(BilledDocument::date).thenComparing(ORDER);

  private final Jobs jobs;
  private final BillingOptions options;
  private final List<BilledDocument> register;
  private final VisitMatching matching;
  private final LineMaker maker;
  private final LocalDate openingDate;
  private final Corrections corrections;

  private MonthBilling(Jobs jobs, List<BilledDocument> before, BillingOptions options) {
    this.jobs = jobs;
    this.options = options;
    register = NamedByPayments.issue(payments(), before);
    List<BilledDocument> standing =
        register.stream()
            .filter(BilledDocument::counts)
            .filter(document -> !ofMonth(document) || document.state().fixed())
            .sorted(BY_DATE)
            .toList();
    BilledVisits billed = BilledVisits.issued(standing);
    matching = VisitMatching.of(jobs, billed);
    maker = new LineMaker(jobs.index(), matching::key);
    openingDate = openingDate();
    corrections = new Corrections(jobs, billed, matching, maker, options, drafted());
  }

  /**
   * Decides a month.
   *
   * @param jobs the book's jobs
   * @param register all documents that the register holds
   * @param options the month and what was asked
   * @return the documents after the run, and what to report
   */
  public static BillingDecision decide(
      Jobs jobs, List<BilledDocument> register, BillingOptions options) {
    BillingDecision decision = new MonthBilling(jobs, register, options).decision();
    List<BilledDocument> named =
        NamedByPayments.issue(jobs.index().book().payments(), decision.documents());
    // A payment may name what this run drafts; a run that begins a register issues nothing.
    boolean stands = register.isEmpty() || named.equals(decision.documents());
    return stands ? decision : decide(jobs, named, options);
  }

  private List<Payment> payments() {
    return jobs.index().book().payments();
  }

  private boolean ofMonth(BilledDocument document) {
    return document.month().equals(options.month());
  }

  /** A correction that was asked for stays as long as its reason does. */
  private Map<String, Set<VisitKey>> drafted() {
    return register.stream()
        .filter(document -> ofMonth(document) && document.state() == DocumentState.DRAFT)
        .filter(document -> !document.invoice())
        .collect(
            Collectors.groupingBy(
                BilledDocument::corrects,
                Collectors.flatMapping(
                    document -> document.lines().stream().map(DocumentLine::visit),
                    Collectors.toSet())));
  }

  private LocalDate openingDate() {
    return jobs.index()
        .book()
        .settings()
        .findDate(Setting.OPENING_DATE)
        .orElseGet(() -> earliestMonth().atDay(1));
  }

  private YearMonth earliestMonth() {
    return register.stream()
        .map(BilledDocument::month)
        .filter(month -> month.isBefore(options.month()))
        .min(Comparator.naturalOrder())
        .orElse(options.month());
  }

  private BillingDecision decision() {
    List<Job> earlier = earlierUnbilled();
    List<Job> included = options.includeEarlier() ? earlier : List.of();
    List<BilledDocument> all = new ArrayList<>(register.stream().filter(d -> !ofMonth(d)).toList());
    all.addAll(documents(included));
    all.sort(ORDER);
    return new BillingDecision(
        all.stream().filter(this::ofMonth).toList(),
        all,
        corrections.differences(),
        options.includeEarlier() ? List.of() : earlier,
        included,
        openingDate);
  }

  private List<Job> earlierUnbilled() {
    LocalDate first = options.month().atDay(1);
    LocalDate held = earliestMonth().atDay(1);
    LocalDate from = held.isAfter(openingDate) ? held : openingDate;
    return jobs.all().stream()
        .filter(job -> job.date().isBefore(first) && !job.date().isBefore(from))
        .filter(this::open)
        .toList();
  }

  /** Whether a visit, or a payer's part of it, is on no document yet. */
  private boolean open(Job job) {
    boolean part = matching.known(job) && !corrections.rest(job).isEmpty();
    boolean all = !matching.known(job) && !corrections.isMoved(job);
    return !job.cancelled() && (part || all);
  }

  private List<BilledDocument> documents(List<Job> included) {
    Map<String, List<DocumentLine>> invoices = new TreeMap<>(Names.ORDER);
    Stream.of(included, corrections.jobs(), ofTheMonth())
        .flatMap(List::stream)
        .sorted(Job.ORDER)
        .forEach(job -> addLines(job, invoices));
    DocumentMaker documents =
        new DocumentMaker(jobs.index(), register, options.month(), maker, this::due, numbering());
    invoices.forEach(documents::invoice);
    corrections.credits().forEach(documents::creditNote);
    return documents.finished();
  }

  private void addLines(Job job, Map<String, List<DocumentLine>> invoices) {
    Set<String> rest = corrections.rest(job);
    String formerly = corrections.formerly(job);
    maker
        .byPayer(job)
        .forEach(
            (payer, lines) -> {
              if (rest.isEmpty() || rest.contains(payer)) {
                lines.forEach(
                    line ->
                        invoices
                            .computeIfAbsent(payer, unused -> new ArrayList<>())
                            .add(line.billedBefore(formerly)));
              }
            });
  }

  private List<Job> ofTheMonth() {
    return jobs.between(options.month().atDay(1), options.month().atEndOfMonth()).stream()
        .filter(this::open)
        .toList();
  }

  private Numbering numbering() {
    NumberPattern pattern = BegunNumbers.pattern(jobs.index().book().settings());
    int first = jobs.index().book().settings().whole(Setting.NEXT_INVOICE_NUMBER);
    return new Numbering(pattern, Math.max(1, first), register);
  }

  private LocalDate due(String owner) {
    Optional<Integer> own = jobs.index().owner(owner).flatMap(Owner::termsDays);
    int days = own.orElseGet(() -> jobs.index().book().settings().whole(Setting.TERMS_DAYS));
    return options.month().atEndOfMonth().plusDays(days);
  }
}

package clenchbook.billing;

import clenchbook.billing.corrections.BilledVisits;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.corrections.Corrections;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.DocumentState;
import clenchbook.billing.documents.LineMaker;
import clenchbook.billing.documents.VisitKey;
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
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Decides a month's documents over the register's state: drafts are made anew under their own
 * numbers, issued ones stand, what changed in a visit's own row is taken back by credit notes.
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
  private final LineMaker maker;
  private final List<BilledDocument> register;
  private final List<BilledDocument> standing;
  private final BilledVisits borne;
  private final LocalDate openingDate;
  private final Corrections corrections;

  private MonthBilling(Jobs jobs, List<BilledDocument> before, BillingOptions options) {
    this.jobs = jobs;
    this.options = options;
    maker = new LineMaker(jobs.index());
    register = issuedByPayments(before);
    standing =
        register.stream()
            .filter(BilledDocument::counts)
            .filter(document -> !ofMonth(document) || document.state().fixed())
            .sorted(BY_DATE)
            .toList();
    borne = new BilledVisits(standing);
    openingDate = openingDate();
    corrections = new Corrections(jobs.all(), borne, maker, options);
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
    return new MonthBilling(jobs, register, options).decision();
  }

  private boolean ofMonth(BilledDocument document) {
    return document.month().equals(options.month());
  }

  /** A payment that names a draft shows that the owner has it: it counts as issued. */
  private List<BilledDocument> issuedByPayments(List<BilledDocument> before) {
    Set<String> named = new HashSet<>();
    for (Payment payment : jobs.index().book().payments()) {
      named.add(Names.key(payment.invoice()));
    }
    return before.stream()
        .map(
            document ->
                document.state() == DocumentState.DRAFT
                        && named.contains(Names.key(document.number()))
                    ? document.in(DocumentState.ISSUED)
                    : document)
        .toList();
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
    List<BilledDocument> month = documents(included);
    List<BilledDocument> all = new ArrayList<>(register.stream().filter(d -> !ofMonth(d)).toList());
    all.addAll(month);
    all.sort(ORDER);
    return new BillingDecision(
        month,
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

  private boolean open(Job job) {
    VisitKey key = VisitKey.of(job);
    return !job.cancelled() && !borne.bears(key) && !corrections.rebilled().contains(key);
  }

  private List<BilledDocument> documents(List<Job> included) {
    Map<String, List<DocumentLine>> invoices = new TreeMap<>(Names.ORDER);
    Stream.of(included, corrections.jobs(), ofTheMonth())
        .flatMap(List::stream)
        .sorted(Job.ORDER)
        .forEach(
            job ->
                maker
                    .byPayer(job)
                    .forEach(
                        (payer, lines) ->
                            invoices
                                .computeIfAbsent(payer, unused -> new ArrayList<>())
                                .addAll(lines)));
    DocumentMaker documents =
        new DocumentMaker(jobs.index(), register, options.month(), maker, this::due, numbering());
    invoices.forEach(documents::invoice);
    corrections.credits().forEach(documents::creditNote);
    return documents.finished();
  }

  private List<Job> ofTheMonth() {
    return jobs.between(options.month().atDay(1), options.month().atEndOfMonth()).stream()
        .filter(this::open)
        .toList();
  }

  private Numbering numbering() {
    NumberPattern pattern =
        NumberPattern.parse(jobs.index().book().settings().text(Setting.INVOICE_PATTERN))
            .orElse(NumberPattern.DEFAULT);
    int first = jobs.index().book().settings().whole(Setting.NEXT_INVOICE_NUMBER);
    return new Numbering(pattern, Math.max(1, first), register);
  }

  private LocalDate due(String owner) {
    Optional<Integer> own = jobs.index().owner(owner).flatMap(Owner::termsDays);
    int days = own.orElseGet(() -> jobs.index().book().settings().whole(Setting.TERMS_DAYS));
    return options.month().atEndOfMonth().plusDays(days);
  }
}

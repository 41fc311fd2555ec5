package clenchbook.billing;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.accounts.Account.Movement;
import clenchbook.billing.accounts.Account.Source;
import clenchbook.billing.accounts.EnteredPayments;
import clenchbook.billing.accounts.Settling;
import clenchbook.billing.corrections.UnbilledVisits;
import clenchbook.billing.corrections.VisitMatching;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.VisitKey;
import clenchbook.book.Names;
import clenchbook.book.Owner;
import clenchbook.book.Payment;
import clenchbook.book.PaymentKind;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Draws up every owner's account from documents, payments and money taken at the truck. */
public final class Accounts {
  private final Jobs jobs;
  private final BillingDecision billing;
  private final LocalDate first;
  private final LocalDate last;
  private final LocalDate entered;
  private final MinorUnit unit;
  private final VisitMatching matching;
  private final TruckMoney money;
  private final Map<String, List<Movement>> movements = new TreeMap<>(Names.ORDER);
  private final Map<String, Map<VisitKey, String>> bearers = new HashMap<>();
  private final Map<String, List<BilledDocument>> documents = new HashMap<>();

  private Accounts(Jobs jobs, BillingDecision billing, LocalDate first, LocalDate last) {
    this.jobs = jobs;
    this.billing = billing;
    this.first = first;
    this.last = last;
    entered = EnteredPayments.upTo(jobs.index().book().payments(), last).orElse(LocalDate.MIN);
    unit = jobs.index().book().settings().minorUnit();
    matching = new UnbilledVisits(jobs, billing.documents()).matching();
    money = TruckMoney.of(jobs, billing.documents());
  }

  /**
   * Every known owner's account.
   *
   * @param jobs the book's jobs
   * @param billing the documents after the run
   * @param first the month's first day
   * @param last the month's last day; nothing after it counts
   * @return by owner's name; owners without any movement included
   */
  public static List<Account> of(
      Jobs jobs, BillingDecision billing, LocalDate first, LocalDate last) {
    Accounts accounts = new Accounts(jobs, billing, first, last);
    accounts.gather();
    return accounts.movements.entrySet().stream()
        .map(entry -> accounts.account(entry.getKey(), entry.getValue()))
        .toList();
  }

  private void gather() {
    jobs.index().book().owners().forEach(owner -> of(owner.name()));
    for (BilledDocument document : billing.documents()) {
      if (document.counts() && !document.date().isAfter(last)) {
        of(document.owner())
            .add(
                new Movement(
                    document.date(),
                    Source.DOCUMENT,
                    PaymentKind.PAYMENT,
                    document.number(),
                    document.gross()));
        documents
            .computeIfAbsent(ownerKey(document.owner()), unused -> new ArrayList<>())
            .add(document);
        document.lines().forEach(line -> bears(document, line));
      }
    }
    jobs.all().forEach(this::truck);
    jobs.index().book().payments().forEach(this::payment);
  }

  private void bears(BilledDocument document, DocumentLine line) {
    if (document.invoice()) {
      bearers
          .computeIfAbsent(ownerKey(document.owner()), unused -> new HashMap<>())
          .put(line.visit(), document.number());
    }
  }

  private List<Movement> of(String owner) {
    return movements.computeIfAbsent(jobs.index().ownerName(owner), unused -> new ArrayList<>());
  }

  private String ownerKey(String name) {
    return Names.key(jobs.index().ownerName(name));
  }

  private boolean counts(LocalDate day) {
    return !day.isAfter(last) && !day.isBefore(billing.openingDate());
  }

  private void truck(Job job) {
    if (counts(job.date())) {
      money.of(job).forEach((owner, paid) -> truck(job, owner, paid));
    }
  }

  private void truck(Job job, String owner, BigDecimal amount) {
    String number =
        bearers.getOrDefault(ownerKey(owner), Map.of()).getOrDefault(matching.key(job), "");
    of(owner)
        .add(new Movement(job.date(), Source.TRUCK, PaymentKind.PAYMENT, number, amount.negate()));
  }

  private void payment(Payment payment) {
    if (!counts(payment.date()) || payment.kind() == PaymentKind.TIP) {
      return;
    }
    BigDecimal amount = unit.round(payment.amount());
    boolean out = payment.kind() == PaymentKind.REFUND;
    of(payment.owner())
        .add(
            new Movement(
                payment.date(),
                Source.PAYMENT,
                payment.kind(),
                payment.invoice(),
                out ? amount : amount.negate()));
  }

  private Account account(String owner, List<Movement> all) {
    List<Movement> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparing(Movement::date).thenComparing(Movement::source));
    BigDecimal opening =
        jobs.index()
            .owner(owner)
            .flatMap(Owner::openingBalance)
            .map(unit::round)
            .orElse(unit.zero());
    if (billing.openingDate().isAfter(last)) {
      opening = unit.zero();
    }
    List<Movement> before = sorted.stream().filter(m -> m.date().isBefore(first)).toList();
    List<Movement> month = sorted.stream().filter(m -> !m.date().isBefore(first)).toList();
    BigDecimal broughtForward = opening.add(sum(before));
    BigDecimal invoiced = sum(documents(month));
    BigDecimal paid = sum(month).subtract(invoiced).negate();
    BigDecimal balance = broughtForward.add(invoiced).subtract(paid);
    Settling settling =
        new Settling(opening, billing.openingDate(), ofOwner(owner), sorted, first, unit);
    return new Account(
        owner,
        broughtForward,
        invoiced,
        paid,
        balance,
        settling.ages(last),
        settling.ages(entered),
        month,
        settling.open(),
        settling.writtenOff(),
        settling.olderMoved());
  }

  private List<BilledDocument> ofOwner(String owner) {
    return documents.getOrDefault(ownerKey(owner), List.of()).stream()
        .sorted(Comparator.comparing(BilledDocument::date).thenComparing(MonthBilling.ORDER))
        .toList();
  }

  private static List<Movement> documents(List<Movement> all) {
    return all.stream().filter(movement -> movement.source() == Source.DOCUMENT).toList();
  }

  private BigDecimal sum(List<Movement> all) {
    return all.stream().map(Movement::amount).reduce(unit.zero(), BigDecimal::add);
  }
}

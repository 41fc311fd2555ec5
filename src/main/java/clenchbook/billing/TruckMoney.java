package clenchbook.billing;

import clenchbook.billing.accounts.TruckShares;
import clenchbook.billing.corrections.UnbilledVisits;
import clenchbook.billing.corrections.VisitMatching;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.TaxAmounts;
import clenchbook.billing.documents.TaxTotal;
import clenchbook.book.Names;
import clenchbook.book.TaxOn;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.Payer;
import clenchbook.jobs.charge.ChargeLine;
import clenchbook.jobs.charge.JobCharges;
import clenchbook.jobs.charge.LineTax;
import clenchbook.values.money.LargestRemainder;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Money taken at the truck, by whose it is, for balances and the year's end alike. Where the row
 * gives no amount and says that it is paid in full, that is what the visit is charged: on the
 * invoice that bears it, else by the book. Its tax is worked out as the invoice does it, for all
 * such visits of a payer and month together, so that an invoice of which all is paid leaves no odd
 * cent.
 */
public final class TruckMoney {
  private final BookIndex index;
  private final MinorUnit unit;
  private final Map<Job, Map<String, BigDecimal>> inFull = new IdentityHashMap<>();

  /** What is charged with one tax on one invoice, before it is summed. */
  private record Group(String payer, String document, LineTax tax) {}

  /** A part of a group. */
  private record Part(Job job, String payer, BigDecimal amount) {}

  private TruckMoney(Jobs jobs) {
    index = jobs.index();
    unit = index.book().settings().minorUnit();
  }

  /**
   * The money of a book.
   *
   * @param jobs the book's jobs
   * @param documents all documents; void ones do not count
   */
  public static TruckMoney of(Jobs jobs, List<BilledDocument> documents) {
    TruckMoney money = new TruckMoney(jobs);
    if (jobs.all().stream().anyMatch(TruckMoney::isInFull)) {
      money.count(jobs, documents);
    }
    return money;
  }

  private static boolean isInFull(Job job) {
    return job.visit().paidInFull() && !job.cancelled() && !job.payers().isEmpty();
  }

  /**
   * Who handed what over for a job.
   *
   * @param job the job
   * @return amounts by name as Owners spells it; empty where nothing was taken
   */
  public Map<String, BigDecimal> of(Job job) {
    return job.visit().paidInFull()
        ? inFull.getOrDefault(job, Map.of())
        : TruckShares.of(job, index);
  }

  /** All that was taken for a job. */
  public BigDecimal sum(Job job) {
    return of(job).values().stream().reduce(unit.zero(), BigDecimal::add);
  }

  private void count(Jobs jobs, List<BilledDocument> documents) {
    VisitMatching matching = new UnbilledVisits(jobs, documents).matching();
    JobCharges charges = new JobCharges(jobs.index());
    Map<String, BilledDocument> bearers = bearers(documents);
    Map<Group, List<Part>> groups = new LinkedHashMap<>();
    for (Job job : jobs.all()) {
      if (isInFull(job)) {
        List<ChargeLine> lines = charges.lines(job);
        for (Payer whose : TruckShares.whose(job, index)) {
          String payer = whose.name();
          String key = key(payer, matching.key(job).toString());
          BilledDocument bearer = bearers.get(key);
          if (bearer == null) {
            byBook(groups, job, payer, lines);
          } else {
            byInvoice(groups, job, payer, bearer, matching);
          }
        }
      }
    }
    boolean perLine = jobs.index().book().settings().taxOn() == TaxOn.LINE;
    groups.forEach((group, parts) -> share(group, parts, perLine));
  }

  /** The first invoice that bears each visit, by its payer. */
  private Map<String, BilledDocument> bearers(List<BilledDocument> documents) {
    Map<String, BilledDocument> first = new HashMap<>();
    documents.stream()
        .filter(document -> document.counts() && document.invoice())
        .sorted(
            java.util.Comparator.comparing(BilledDocument::date).thenComparing(MonthBilling.ORDER))
        .forEach(
            document ->
                document
                    .lines()
                    .forEach(
                        line ->
                            first.putIfAbsent(
                                key(document.owner(), line.visit().toString()), document)));
    return first;
  }

  private String key(String payer, String visit) {
    return Names.key(index.ownerName(payer)) + "|" + visit;
  }

  private static void byBook(
      Map<Group, List<Part>> groups, Job job, String payer, List<ChargeLine> lines) {
    for (ChargeLine line : lines) {
      if (Names.same(line.payer().name(), payer)) {
        add(groups, new Group(payer, month(job), line.tax()), job, line.amount());
      }
    }
  }

  private static String month(Job job) {
    return YearMonth.from(job.date()).toString();
  }

  private static void byInvoice(
      Map<Group, List<Part>> groups,
      Job job,
      String payer,
      BilledDocument bearer,
      VisitMatching matching) {
    for (DocumentLine line : bearer.lines()) {
      if (line.visit().equals(matching.key(job))) {
        add(groups, new Group(payer, bearer.number(), line.tax()), job, line.amount());
      }
    }
  }

  private static void add(Map<Group, List<Part>> groups, Group group, Job job, BigDecimal amount) {
    groups
        .computeIfAbsent(group, unused -> new ArrayList<>())
        .add(new Part(job, group.payer(), amount));
  }

  private void share(Group group, List<Part> parts, boolean perLine) {
    List<TaxAmounts.Item> items =
        parts.stream().map(part -> new TaxAmounts.Item(part.amount(), group.tax())).toList();
    BigDecimal whole = unit.zero();
    for (TaxTotal total : TaxAmounts.of(items, perLine, unit).totals()) {
      whole = whole.add(total.net()).add(total.tax());
    }
    List<BigDecimal> shares =
        LargestRemainder.split(whole, parts.stream().map(Part::amount).toList(), unit);
    for (int at = 0; at < parts.size(); at++) {
      Part part = parts.get(at);
      inFull
          .computeIfAbsent(part.job(), unused -> new LinkedHashMap<>())
          .merge(index.ownerName(part.payer()), shares.get(at), BigDecimal::add);
    }
  }
}

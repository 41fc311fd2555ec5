package clenchbook.billing;

import clenchbook.billing.corrections.UnbilledVisits;
import clenchbook.billing.corrections.VisitMatching;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.VisitKey;
import clenchbook.book.Names;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Money taken at the truck for the visits of an invoice. A visit's money belongs to the first
 * invoice that bears it: one that bears it anew after a correction doesn't take it again, since the
 * credit note gives back the whole line.
 */
public final class Prepaid {
  private final Jobs jobs;
  private final MinorUnit unit;
  private final TruckMoney money;
  private final Map<VisitKey, Job> paid = new HashMap<>();
  private final Map<String, String> first = new HashMap<>();

  /**
   * Gathers the money of a book.
   *
   * @param jobs the book's jobs
   * @param documents all documents after the run
   */
  public Prepaid(Jobs jobs, List<BilledDocument> documents) {
    unit = jobs.index().book().settings().minorUnit();
    this.jobs = jobs;
    money = TruckMoney.of(jobs, documents);
    VisitMatching matching = new UnbilledVisits(jobs, documents).matching();
    for (Job job : jobs.all()) {
      if (job.visit().paid().isPresent() || !money.of(job).isEmpty()) {
        paid.put(matching.key(job), job);
      }
    }
    documents.stream()
        .filter(document -> document.counts() && document.invoice())
        .sorted(Comparator.comparing(BilledDocument::date).thenComparing(MonthBilling.ORDER))
        .forEach(this::bears);
  }

  private void bears(BilledDocument document) {
    for (DocumentLine line : document.lines()) {
      if (paid.containsKey(line.visit())) {
        first.putIfAbsent(key(document, line.visit()), document.number());
      }
    }
  }

  private String key(BilledDocument document, VisitKey visit) {
    return Names.key(jobs.index().ownerName(document.owner())) + "|" + visit;
  }

  /**
   * What was paid at the truck for an invoice.
   *
   * @param document an invoice; a credit note has none
   * @return the sum over its visits, at the minor unit; not negative
   */
  public BigDecimal of(BilledDocument document) {
    if (!document.invoice()) {
      return unit.zero();
    }
    return document.lines().stream()
        .map(DocumentLine::visit)
        .distinct()
        .filter(visit -> document.number().equals(first.get(key(document, visit))))
        .flatMap(visit -> Optional.ofNullable(paid.get(visit)).stream())
        .map(job -> share(job, document.owner()))
        .reduce(unit.zero(), BigDecimal::add);
  }

  private String named(String owner) {
    return jobs.index().ownerName(owner);
  }

  private BigDecimal share(Job job, String owner) {
    return money.of(job).entrySet().stream()
        .filter(share -> Names.same(share.getKey(), named(owner)))
        .map(Map.Entry::getValue)
        .reduce(unit.zero(), BigDecimal::add);
  }
}

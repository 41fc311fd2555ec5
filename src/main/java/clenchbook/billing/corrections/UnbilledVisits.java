package clenchbook.billing.corrections;

import clenchbook.billing.corrections.BilledVisits.Bearing;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Names;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.Payer;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Which visits, or which payers' parts of them, no document bills, net of credit notes; drafts bill
 * and take back like issued documents.
 */
public final class UnbilledVisits {
  private final Jobs jobs;
  private final BilledVisits billed;
  private final VisitMatching matching;

  /**
   * Compares a book with documents.
   *
   * @param jobs the book's jobs
   * @param documents all documents; void ones do not count
   */
  public UnbilledVisits(Jobs jobs, List<BilledDocument> documents) {
    this.jobs = jobs;
    billed =
        BilledVisits.withDrafts(
            documents.stream()
                .filter(BilledDocument::counts)
                .sorted(Comparator.comparing(BilledDocument::date))
                .toList());
    matching = VisitMatching.of(jobs, billed);
  }

  /**
   * The payers of a job that no document bills for it.
   *
   * @param job an uncancelled job
   * @return their names, in the order of its payers; empty when it is billed
   */
  public Set<String> payers(Job job) {
    return matching.known(job)
        ? rest(jobs, job, billed.of(matching.key(job)))
        : names(job.payers());
  }

  /**
   * Which row each visit on a document is.
   *
   * @return the pairs
   */
  public VisitMatching matching() {
    return matching;
  }

  private static Set<String> names(List<Payer> payers) {
    Set<String> names = new LinkedHashSet<>();
    payers.forEach(payer -> names.add(payer.name()));
    return names;
  }

  /** Payers that no invoice bills, as long as no more than the whole visit is billed. */
  static Set<String> rest(Jobs jobs, Job job, List<Bearing> bearings) {
    Set<String> billed = new HashSet<>();
    bearings.forEach(
        bearing -> billed.add(Names.key(jobs.index().ownerName(bearing.invoice().owner()))));
    Set<String> rest = new LinkedHashSet<>();
    BigDecimal share = VisitChange.share(bearings);
    for (Payer payer : job.payers()) {
      BigDecimal more = share.add(payer.sharePercent());
      if (!billed.contains(Names.key(payer.name())) && VisitChange.withinWhole(more)) {
        rest.add(payer.name());
        share = more;
      }
    }
    return rest;
  }
}

package clenchbook.billing;

import clenchbook.billing.corrections.Difference;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Names;
import clenchbook.jobs.Job;
import java.time.LocalDate;
import java.util.List;

/**
 * What a month's run decided about documents.
 *
 * @param month the month's documents after the run, by series and sequence, void ones included
 * @param documents all documents after the run, in that order
 * @param differences where the book no longer agrees with documents that are out
 * @param unbilled earlier visits that no document bears, in order
 * @param included earlier visits that this run bills
 * @param openingDate the day from which balances count
 */
public record BillingDecision(
    List<BilledDocument> month,
    List<BilledDocument> documents,
    List<Difference> differences,
    List<Job> unbilled,
    List<Job> included,
    LocalDate openingDate) {
  /** Copies its lists. */
  public BillingDecision {
    month = List.copyOf(month);
    documents = List.copyOf(documents);
    differences = List.copyOf(differences);
    unbilled = List.copyOf(unbilled);
    included = List.copyOf(included);
  }

  /**
   * The owner's other invoices of the month that bear what is treated otherwise for tax, because
   * lines outside its scope stand apart.
   *
   * @param document an invoice of the month
   * @return their numbers, in order; mostly none
   */
  public List<String> beside(BilledDocument document) {
    return month.stream()
        .filter(other -> other.counts() && other.invoice())
        .filter(other -> Names.same(other.owner(), document.owner()))
        .filter(other -> other.outsideScope() != document.outsideScope())
        .map(BilledDocument::number)
        .toList();
  }
}

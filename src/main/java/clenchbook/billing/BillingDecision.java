package clenchbook.billing;

import clenchbook.billing.corrections.Difference;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.book.Names;
import clenchbook.jobs.Job;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

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
   * The decision with those differences alone that a run of the month tells: each in the run of the
   * month that it concerns and in the first run that finds it.
   *
   * @param told the differences that runs have told, by {@link Difference#line}, with the month of
   *     the run that told it first
   * @param run the month that is run
   * @return the decision
   */
  public BillingDecision telling(Map<String, YearMonth> told, YearMonth run) {
    return new BillingDecision(
        month,
        documents,
        differences.stream()
            .filter(
                difference ->
                    difference.concerns(run)
                        || told.getOrDefault(difference.line(), run).equals(run))
            .toList(),
        unbilled,
        included,
        openingDate);
  }

  /**
   * The decision as it is told: with every owner as they are called now. What is recorded keeps the
   * name that a document was issued under.
   *
   * @param current the name of now for each
   * @return the decision
   */
  public BillingDecision naming(UnaryOperator<String> current) {
    return new BillingDecision(
        month.stream().map(each -> each.ownedBy(current.apply(each.owner()))).toList(),
        documents.stream().map(each -> each.ownedBy(current.apply(each.owner()))).toList(),
        differences.stream().map(each -> each.ownedBy(current.apply(each.owner()))).toList(),
        unbilled,
        included,
        openingDate);
  }

  /**
   * What a run tells, for the register.
   *
   * @param run the month that is run
   * @return that month by {@link Difference#line}
   */
  public Map<String, YearMonth> told(YearMonth run) {
    Map<String, YearMonth> told = new TreeMap<>();
    differences.forEach(difference -> told.put(difference.line(), run));
    return told;
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

  /**
   * The invoices that bill anew what a credit note of the month takes back from their owner.
   *
   * @param note a credit note of the month
   * @return their numbers, in order; empty where nothing is billed anew, or to somebody else
   */
  public List<String> replacing(BilledDocument note) {
    return note.lines().stream()
        .flatMap(line -> billedAnew(line, note).stream())
        .map(BilledDocument::number)
        .distinct()
        .sorted()
        .toList();
  }

  /**
   * The credit notes of the month whose visits an invoice of the month bills anew.
   *
   * @param invoice an invoice of the month
   * @return in order; mostly none
   */
  public List<BilledDocument> replacedBy(BilledDocument invoice) {
    return month.stream()
        .filter(note -> note.counts() && !note.invoice())
        .filter(note -> replacing(note).contains(invoice.number()))
        .toList();
  }

  /** The first invoice after the corrected one; a later one replaces that first in its turn. */
  private Optional<BilledDocument> billedAnew(DocumentLine line, BilledDocument note) {
    int corrected =
        documents.stream().map(BilledDocument::number).toList().indexOf(note.corrects());
    return documents.stream()
        .skip(corrected + 1L)
        .filter(document -> document.counts() && document.invoice())
        .filter(document -> document.month().equals(note.month()))
        .filter(document -> Names.same(document.owner(), note.owner()))
        .filter(document -> document.lines().stream().anyMatch(each -> isAnew(each, line)))
        .findFirst();
  }

  private static boolean isAnew(DocumentLine line, DocumentLine before) {
    return line.visit().equals(before.visit()) || line.formerly().equals(before.visit().line());
  }
}

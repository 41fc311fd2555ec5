package clenchbook.billing.corrections;

import clenchbook.billing.corrections.BilledVisits.Bearing;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.VisitKey;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How many of the visits that issued documents bill, net of issued credit notes, are still rows of
 * the book; changed and cancelled rows are.
 *
 * @param visits billed visits
 * @param missing those of them without a row
 * @param first the first that is missing, as its document has it
 */
public record IssuedRows(int visits, int missing, Optional<Bearing> first) {
  private static final int FEW = 2;

  /**
   * Looks for the rows.
   *
   * @param jobs the book's jobs
   * @param documents all documents of the register
   * @param held rows of visits that are held back, each of which may be a missing one
   * @return what was found
   */
  public static IssuedRows of(Jobs jobs, List<BilledDocument> documents, int held) {
    BilledVisits billed =
        BilledVisits.issued(
            documents.stream()
                .filter(document -> document.state().fixed())
                .sorted(Comparator.comparing(BilledDocument::date))
                .toList());
    VisitMatching matching = VisitMatching.of(jobs, billed);
    Set<VisitKey> cancelled = new HashSet<>();
    jobs.all().stream().filter(Job::cancelled).forEach(job -> cancelled.add(VisitKey.of(job, 1)));
    Map<VisitKey, List<Bearing>> gone = new LinkedHashMap<>();
    for (VisitKey visit : billed.visits()) {
      if (matching.row(visit).isEmpty() && !cancelled.contains(visit.at(1))) {
        gone.put(visit, billed.of(visit));
      }
    }
    Set<VisitKey> billedAsTheyStand =
        billed.visits().stream().map(visit -> visit.at(1)).collect(Collectors.toSet());
    // A row may have been moved and cancelled, too.
    List<Job> unknown =
        jobs.all().stream()
            .filter(job -> !matching.known(job))
            .filter(job -> !job.cancelled() || !billedAsTheyStand.contains(VisitKey.of(job, 1)))
            .sorted(Job.ORDER)
            .toList();
    MovedRows moved = new MovedRows(jobs.index(), gone, unknown);
    gone.keySet().removeIf(visit -> moved.of(visit).isPresent());
    return new IssuedRows(
        billed.visits().size(),
        Math.max(0, gone.size() - held),
        gone.values().stream().flatMap(List::stream).findFirst());
  }

  /**
   * Whether the register is another book's: most of what it billed is no row of this one. A single
   * visit may well have been deleted.
   *
   * @return true for another book's
   */
  public boolean ofAnotherBook() {
    return visits >= FEW && missing * 2 > visits;
  }
}

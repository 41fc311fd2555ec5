package clenchbook.billing;

import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.corrections.UnbilledVisits;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.billing.documents.VisitKey;
import clenchbook.jobs.Jobs;
import java.time.YearMonth;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What month-end was last asked for a month, read from the drafts it left: to include earlier
 * visits, or to correct an invoice at once. What goes out is then what the farrier looked at.
 */
public final class LastAsked {
  private LastAsked() {}

  /**
   * The options to bill the month with.
   *
   * @param register all documents that the register holds
   * @param rowsHeld true when rows of Visits are held back
   */
  public static BillingOptions of(
      Jobs jobs, List<BilledDocument> register, YearMonth month, boolean rowsHeld) {
    BillingOptions plain = new BillingOptions(month, false, Optional.empty(), rowsHeld);
    List<BilledDocument> drafts =
        register.stream()
            .filter(document -> document.month().equals(month))
            .filter(document -> document.state() == DocumentState.DRAFT)
            .toList();
    if (drafts.isEmpty()) {
      return plain;
    }
    BillingDecision without = MonthBilling.decide(jobs, register, plain);
    return new BillingOptions(month, bears(jobs, drafts, without), Optional.empty(), rowsHeld);
  }

  private static boolean bears(Jobs jobs, List<BilledDocument> drafts, BillingDecision without) {
    Set<VisitKey> billed = new HashSet<>();
    drafts.forEach(draft -> draft.lines().forEach(line -> billed.add(line.visit())));
    return without.unbilled().stream()
        .map(new UnbilledVisits(jobs, without.documents()).matching()::key)
        .anyMatch(billed::contains);
  }
}

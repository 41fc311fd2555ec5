package clenchbook.billing;

import clenchbook.billing.corrections.Difference;
import clenchbook.billing.corrections.Difference.What;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.book.Names;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Why a correction that was asked for is none.
 *
 * @param reason why
 * @param number the number as the register writes it, else as it was asked for
 * @param month the document's month; empty for an unknown number
 */
public record RefusedCorrection(Reason reason, String number, Optional<YearMonth> month) {

  /** Why nothing can be corrected. */
  public enum Reason {
    /** The register holds no such number. */
    UNKNOWN,
    /** It is a credit note. */
    CREDIT_NOTE,
    /** It is not out: the book is changed and month-end run again. */
    DRAFT,
    /** Nothing stands on it. */
    VOID,
    /** It is of a later month: a credit note is never dated before its invoice. */
    LATER,
    /** Rows of visits are gone while others are held back. */
    ROWS_HELD,
    /** A draft of another month has what changed. */
    ON_DRAFT,
    /** Only whom it is billed to, or how it is shared, changed. */
    OWNERS,
    /** Only prices, discounts or rates changed. */
    PRICES,
    /** Its rows are as they were billed. */
    NOTHING
  }

  /**
   * Looks whether a correction was made.
   *
   * @param number the number that was asked for
   * @param register all documents that the register held
   * @param decision what was decided with that number asked for
   * @param month the month that is run
   * @return why not; empty when the decision takes something back from that invoice
   */
  public static Optional<RefusedCorrection> of(
      String number, List<BilledDocument> register, BillingDecision decision, YearMonth month) {
    Optional<BilledDocument> found = find(number, register);
    if (found.isEmpty()) {
      return Optional.of(new RefusedCorrection(Reason.UNKNOWN, number, Optional.empty()));
    }
    // A payment may have shown that the draft is out.
    BilledDocument document = find(number, decision.documents()).orElse(found.get());
    return reason(document, decision, month)
        .map(
            reason ->
                new RefusedCorrection(reason, document.number(), Optional.of(document.month())));
  }

  private static Optional<BilledDocument> find(String number, List<BilledDocument> documents) {
    return documents.stream().filter(each -> Names.same(each.number(), number)).findFirst();
  }

  private static Optional<Reason> reason(
      BilledDocument document, BillingDecision decision, YearMonth month) {
    if (!document.invoice()) {
      return Optional.of(Reason.CREDIT_NOTE);
    }
    if (!document.state().fixed()) {
      boolean draft = document.state() == DocumentState.DRAFT;
      return Optional.of(draft ? Reason.DRAFT : Reason.VOID);
    }
    if (document.month().isAfter(month)) {
      return Optional.of(Reason.LATER);
    }
    List<Difference> found =
        decision.differences().stream()
            .filter(difference -> difference.number().equals(document.number()))
            .toList();
    Set<Difference.Kind> kinds = found.stream().map(Difference::kind).collect(Collectors.toSet());
    if (kinds.contains(Difference.Kind.CORRECTED)) {
      return Optional.empty();
    }
    if (kinds.contains(Difference.Kind.MAY_BE_HELD)) {
      return Optional.of(Reason.ROWS_HELD);
    }
    if (kinds.contains(Difference.Kind.ON_DRAFT)) {
      return Optional.of(Reason.ON_DRAFT);
    }
    if (kinds.isEmpty()) {
      return Optional.of(Reason.NOTHING);
    }
    boolean owners =
        found.stream()
            .flatMap(difference -> difference.changes().stream())
            .anyMatch(change -> change.what() == What.OWNER || change.what() == What.SHARE);
    return Optional.of(owners ? Reason.OWNERS : Reason.PRICES);
  }
}

package clenchbook.billing.corrections;

import clenchbook.billing.documents.VisitKey;
import java.math.BigDecimal;

/**
 * Where the book no longer agrees with a document that is out.
 *
 * @param kind what follows from it
 * @param number the document
 * @param owner who was billed
 * @param visit the row of Visits
 * @param horse the horse as printed
 * @param work the Work as printed
 * @param billed what the register holds for the row, net of credits, as charged
 * @param now what the book would charge now
 */
public record Difference(
    Kind kind,
    String number,
    String owner,
    VisitKey visit,
    String horse,
    String work,
    BigDecimal billed,
    BigDecimal now) {

  /** What follows from a difference. */
  public enum Kind {
    /** The visit's own row changed; a credit note takes it back in this run. */
    CORRECTED,
    /** The visit's own row changed; a later month's run, or --correct, takes it back. */
    TO_CORRECT,
    /** The row is gone while others are held back: it may be one of them, so nothing is done. */
    MAY_BE_HELD,
    /** A price list, owner, share, discount or rate changed: drafts only. */
    LISTED
  }
}

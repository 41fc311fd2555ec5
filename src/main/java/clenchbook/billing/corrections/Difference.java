package clenchbook.billing.corrections;

import clenchbook.billing.documents.VisitKey;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;

/**
 * Where the book no longer agrees with a document that is out.
 *
 * @param kind what follows from it
 * @param number the document
 * @param month the document's month
 * @param owner who was billed
 * @param visit the row of Visits
 * @param horse the horse as printed
 * @param work the Work as printed
 * @param billed what the register holds for the row, net of issued credits, as charged
 * @param now what the book would charge now
 * @param changes what changed, at least one
 */
public record Difference(
    Kind kind,
    String number,
    YearMonth month,
    String owner,
    VisitKey visit,
    String horse,
    String work,
    BigDecimal billed,
    BigDecimal now,
    List<Changed> changes) {
  /** Copies its list. */
  public Difference {
    changes = List.copyOf(changes);
  }

  /**
   * The same difference under another name of the owner.
   *
   * @param name as the owner is called now
   * @return the difference
   */
  public Difference ownedBy(String name) {
    return new Difference(kind, number, month, name, visit, horse, work, billed, now, changes);
  }

  /** What follows from a difference. */
  public enum Kind {
    /** The visit's own row changed; a credit note takes it back in this run. */
    CORRECTED,
    /** The visit's own row changed; a later month's run, or --correct, takes it back. */
    TO_CORRECT,
    /** A draft of another month names the visit; that month's run settles it. */
    ON_DRAFT,
    /** The row is gone while others are held back: it may be one of them, so nothing is done. */
    MAY_BE_HELD,
    /** A price list, owner, share, discount or rate changed: drafts only. */
    LISTED
  }

  /** What of a visit changed. */
  public enum What {
    /** The day; both as ISO dates. */
    DATE,
    /** The horse. */
    HORSE,
    /** The Work. */
    WORK,
    /** What the row itself charges; both amounts. */
    CHARGE,
    /** What the price list, a discount or a rate makes of it; both amounts. */
    PRICE,
    /** Who is billed; names joined by commas. */
    OWNER,
    /** How it is shared; per cents joined by commas. */
    SHARE,
    /** The row is no longer there; after is empty. */
    GONE,
    /** The row is cancelled; after is empty. */
    CANCELLED,
    /** Two invoices bill it; before is the other's number. */
    TWICE
  }

  /**
   * One change.
   *
   * @param what of what
   * @param before as billed
   * @param after as the book says now; may be empty
   */
  public record Changed(What what, String before, String after) {}

  /**
   * Whether a difference concerns a month: that of the document, or the one whose credit note takes
   * it back.
   *
   * @param run the month that is run
   * @return true where every run of that month tells it
   */
  public boolean concerns(YearMonth run) {
    return kind == Kind.CORRECTED || month.equals(run);
  }

  /**
   * The same difference in every run: which document, which visit and what changed.
   *
   * @return one line
   */
  public String line() {
    StringBuilder line = new StringBuilder(number).append('|').append(visit.line());
    changes.forEach(
        change ->
            line.append('|')
                .append(change.what())
                .append(' ')
                .append(change.before())
                .append('>')
                .append(change.after()));
    return line.toString();
  }
}

package clenchbook.billing.documents;

import clenchbook.jobs.charge.ChargeLine;
import clenchbook.jobs.charge.LineTax;
import java.math.BigDecimal;

/**
 * One line of an invoice or credit note.
 *
 * @param visit the row of Visits it bears
 * @param formerly the visit it was billed as before its row moved, as {@link VisitKey#line}; empty
 *     for none
 * @param own what in that row itself decided the charge; a change of it is a correction
 * @param sheet the sheet of the row when the document was made
 * @param row the row when the document was made
 * @param horse the horse as printed; empty for a fee without one
 * @param work the Work as printed
 * @param kind the Work or an extra
 * @param part all, goods or rest
 * @param item the extra's name; empty for the Work
 * @param count pieces of the extra; 1 for the Work
 * @param shoeing shoes and sizes in words; empty for none
 * @param reason why the horse was visited, in the book's word
 * @param sharePercent this payer's share; 100 for all of it
 * @param discountPercent the discount within the amount
 * @param amount what is charged, with tax where prices include it; negative when taken back
 * @param net the amount without tax, so that the lines of a code add to its net
 * @param tax the line's tax code and rate
 */
public record DocumentLine(
    VisitKey visit,
    String formerly,
    String own,
    String sheet,
    int row,
    String horse,
    String work,
    ChargeLine.Kind kind,
    ChargeLine.Part part,
    String item,
    int count,
    String shoeing,
    String reason,
    BigDecimal sharePercent,
    BigDecimal discountPercent,
    BigDecimal amount,
    BigDecimal net,
    LineTax tax) {

  /**
   * The same line taken back.
   *
   * @return with amount and net negated
   */
  public DocumentLine takenBack() {
    return with(visit, "", place(), amount.negate(), net.negate());
  }

  /**
   * The line with another net.
   *
   * @param share its part of the code's net
   * @return the line
   */
  public DocumentLine withNet(BigDecimal share) {
    return with(visit, formerly, place(), amount, share);
  }

  /**
   * The line of a visit that was billed under another key before.
   *
   * @param other the key's line; empty for none
   * @return the line
   */
  public DocumentLine billedBefore(String other) {
    return with(visit, other, place(), amount, net);
  }

  /**
   * Whether two lines say the same, wherever their rows stood when they were made: sorting a sheet,
   * or a row more above, changes no document.
   *
   * @param other another line
   * @return true where only sheet and row may differ
   */
  public boolean saysTheSame(DocumentLine other) {
    return equals(other.with(other.visit, other.formerly, place(), other.amount, other.net));
  }

  /** The same line of a visit that is known by another key. */
  DocumentLine of(VisitKey other) {
    return with(other, formerly, place(), amount, net);
  }

  private Place place() {
    return new Place(sheet, row);
  }

  /** Where the row stands. */
  private record Place(String sheet, int row) {}

  private DocumentLine with(
      VisitKey key, String before, Place place, BigDecimal newAmount, BigDecimal newNet) {
    return new DocumentLine(
        key,
        before,
        own,
        place.sheet(),
        place.row(),
        horse,
        work,
        kind,
        part,
        item,
        count,
        shoeing,
        reason,
        sharePercent,
        discountPercent,
        newAmount,
        newNet,
        tax);
  }
}

package clenchbook.reports.letters;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A line of an invoice or credit note.
 *
 * @param date the day of the visit
 * @param horse the horse; empty for a fee that has none
 * @param work what was done, or the extra with its count
 * @param details smaller print beneath: shoe and size, goods or labour part, a reason
 * @param discountPercent the discount within the amount, in percent; empty for none
 * @param sharePercent the part of the whole that this owner pays, in percent; empty for all of it
 * @param amount what it comes to, net or with tax as the document says, in minor units of the
 *     currency
 * @param taxCode the code of its tax; empty for none
 * @param free true for a visit made free of charge, printed as such
 * @param notes what the smaller print adds in the document's language
 */
public record PrintedLine(
    LocalDate date,
    String horse,
    String work,
    List<String> details,
    Optional<BigDecimal> discountPercent,
    Optional<BigDecimal> sharePercent,
    BigDecimal amount,
    String taxCode,
    boolean free,
    List<Note> notes) {
  /** Copies its lists. */
  public PrintedLine {
    details = List.copyOf(details);
    notes = List.copyOf(notes);
  }

  /** What the smaller print may say in any language. */
  public enum Note {
    /** The part of the charge that is goods. */
    GOODS,
    /** The part of the charge that is not goods. */
    WORK_PART,
    /** A shoe was lost. */
    LOST_SHOE,
    /** The horse was lame. */
    LAMENESS,
    /** The horse's first visit. */
    NEW_HORSE
  }

  /** The line as a credit note prints it: what it takes back is a positive amount. */
  public PrintedLine credited() {
    return new PrintedLine(
        date,
        horse,
        work,
        details,
        discountPercent,
        sharePercent,
        amount.negate(),
        taxCode,
        free,
        notes);
  }

  /** A line without notes. */
  public PrintedLine(
      LocalDate date,
      String horse,
      String work,
      List<String> details,
      Optional<BigDecimal> discountPercent,
      Optional<BigDecimal> sharePercent,
      BigDecimal amount,
      String taxCode,
      boolean free) {
    this(
        date,
        horse,
        work,
        details,
        discountPercent,
        sharePercent,
        amount,
        taxCode,
        free,
        List.of());
  }
}

package clenchbook.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One row of Horses: a horse, or one sharer's part of it.
 *
 * @param source the row it was read from
 * @param horse the horse's name
 * @param owner its owner
 * @param sharePercent this owner's share in per cent; empty = not shared
 * @param billTo who is billed instead of the owner; empty = the owner
 * @param place where it stands
 * @param intervalWeeks weeks between visits
 * @param from first day it is this owner's, inclusive
 * @param until last day it is, inclusive
 * @param notes free text
 */
public record HorseRow(
    SourceRow source,
    String horse,
    String owner,
    Optional<BigDecimal> sharePercent,
    String billTo,
    String place,
    Optional<BigDecimal> intervalWeeks,
    Optional<LocalDate> from,
    Optional<LocalDate> until,
    String notes) {
  /**
   * The same row naming others.
   *
   * @param ownerName the owner
   * @param payerName who is billed instead; empty = the owner
   * @return the row
   */
  public HorseRow ownedBy(String ownerName, String payerName) {
    return new HorseRow(
        source,
        horse,
        ownerName,
        sharePercent,
        payerName,
        place,
        intervalWeeks,
        from,
        until,
        notes);
  }
}

package clenchbook.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One row of Visits: one horse, visit and Work, as the farrier wrote it.
 *
 * @param source the row it was read from
 * @param date the day of the visit
 * @param place where; empty = the horse's place
 * @param owner who was named; empty = the horse's owner or sharers
 * @param horse the horse; empty only for a fee
 * @param work a name from Work
 * @param shoe shoe items, in the order written, with counts where given
 * @param size sizes, in the order written, with counts where given
 * @param shoes how many were nailed on
 * @param newShoes how many of them were new
 * @param shaping how they were shaped
 * @param nail the nail item; empty = the Work's
 * @param nails nails driven, in total
 * @param extras extra items with counts
 * @param trimMin minutes trimming
 * @param shapeMin minutes shaping all shoes
 * @param nailMin minutes nailing and clenching
 * @param grindMin minutes grinding
 * @param forgeMin minutes the forge burned; never work
 * @param totalMin minutes from first foot to last clench; replaces the sum
 * @param helperMin somebody else's minutes on this horse
 * @param charge the price typed for this visit; final; 0 = free
 * @param paid money taken at the truck; empty where no amount is given
 * @param paidInFull whether the row says, without an amount, that all was paid
 * @param how how that was paid
 * @param reason why the horse was visited
 * @param lost shoes found lost since the last visit
 * @param vet the vet's part, free text
 * @param notes free text
 */
public record Visit(
    SourceRow source,
    LocalDate date,
    String place,
    String owner,
    String horse,
    String work,
    List<Counted> shoe,
    List<Counted> size,
    Optional<Integer> shoes,
    Optional<Integer> newShoes,
    Optional<Shaping> shaping,
    String nail,
    Optional<Integer> nails,
    List<Counted> extras,
    Optional<BigDecimal> trimMin,
    Optional<BigDecimal> shapeMin,
    Optional<BigDecimal> nailMin,
    Optional<BigDecimal> grindMin,
    Optional<BigDecimal> forgeMin,
    Optional<BigDecimal> totalMin,
    Optional<BigDecimal> helperMin,
    Optional<BigDecimal> charge,
    Optional<BigDecimal> paid,
    boolean paidInFull,
    String how,
    Reason reason,
    Optional<Integer> lost,
    String vet,
    String notes) {
  /** Copies its lists. */
  public Visit {
    shoe = List.copyOf(shoe);
    size = List.copyOf(size);
    extras = List.copyOf(extras);
  }

  /**
   * Whether the row is kept but neither billed nor counted.
   *
   * @return true for a cancelled visit
   */
  public boolean cancelled() {
    return reason == Reason.CANCELLED;
  }

  /**
   * The same row naming another owner.
   *
   * @param name the owner; empty = the horse's owner or sharers
   * @return the row
   */
  public Visit ownedBy(String name) {
    return new Visit(
        source,
        date,
        place,
        name,
        horse,
        work,
        shoe,
        size,
        shoes,
        newShoes,
        shaping,
        nail,
        nails,
        extras,
        trimMin,
        shapeMin,
        nailMin,
        grindMin,
        forgeMin,
        totalMin,
        helperMin,
        charge,
        paid,
        paidInFull,
        how,
        reason,
        lost,
        vet,
        notes);
  }
}

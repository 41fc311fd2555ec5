package clenchbook.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One row of Work: a price and its standard recipe from a date on.
 *
 * @param source the row it was read from
 * @param name the Work's name
 * @param fee true for Kind fee: no shoes, sundries, due date or horse count
 * @param price the list price of the whole job, with or without tax as the settings say
 * @param taxCode a code from Tax; empty = no tax
 * @param shoe the usual shoe items
 * @param shoes shoes nailed on
 * @param shaping the usual shaping
 * @param nail the usual nail item
 * @param nailsPerShoe nails per shoe
 * @param trimMin standard minutes trimming the horse
 * @param shapeMin standard minutes shaping all its shoes
 * @param nailMin standard minutes nailing and clenching
 * @param grindMin standard minutes grinding
 * @param forgeMin standard minutes the forge burns when hot
 * @param taxedPart the share of the charge that is goods, 0 to 1; empty = all of it is taxed
 * @param compareAs the name it is compared under; empty = its own rule
 * @param from the first day it counts; empty = always
 */
public record WorkItem(
    SourceRow source,
    String name,
    boolean fee,
    Optional<BigDecimal> price,
    String taxCode,
    List<Counted> shoe,
    Optional<Integer> shoes,
    Optional<Shaping> shaping,
    String nail,
    Optional<BigDecimal> nailsPerShoe,
    Optional<BigDecimal> trimMin,
    Optional<BigDecimal> shapeMin,
    Optional<BigDecimal> nailMin,
    Optional<BigDecimal> grindMin,
    Optional<BigDecimal> forgeMin,
    Optional<BigDecimal> taxedPart,
    String compareAs,
    Optional<LocalDate> from) {
  /** Copies its lists. */
  public WorkItem {
    shoe = List.copyOf(shoe);
  }
}

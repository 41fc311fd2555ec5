package clenchbook.comparison.pricing;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One Work over the period: what it brings and what it must.
 *
 * @param work its name
 * @param jobs how many jobs
 * @param charged what they brought, without tax
 * @param list the list price at its latest job, without tax; empty where the list has none
 * @param cost what they cost, time included
 * @param margin what was left after labour
 * @param forWage the price at which a job pays all its costs and the wage
 * @param forTarget the price at which it leaves the target margin besides
 * @param riseBrings what a rise of 5 % brings over the period at the same mix
 * @param underList how many jobs were charged less than the list asks, free ones not counted
 * @param underListBy by how much in all
 * @param callbacks how many callbacks it caused
 * @param callbackCost what they cost beyond what was charged for them
 * @param loses why it loses money; empty where it does not
 */
public record WorkPrice(
    String work,
    int jobs,
    BigDecimal charged,
    Optional<BigDecimal> list,
    BigDecimal cost,
    BigDecimal margin,
    BigDecimal forWage,
    BigDecimal forTarget,
    BigDecimal riseBrings,
    int underList,
    BigDecimal underListBy,
    int callbacks,
    BigDecimal callbackCost,
    Optional<Loss> loses) {

  /** What was left after labour and what its callbacks cost; a callback that paid is no gain. */
  public BigDecimal leftAfterCallbacks() {
    return margin.subtract(callbackCost.max(BigDecimal.ZERO));
  }

  /** Why a Work loses money: the cost that is furthest above the book's usual share of a charge. */
  public enum Loss {
    /** Travel. */
    TRAVEL("travel"),
    /** Time on the horse, on the road and at the making. */
    MINUTES("minutes"),
    /** Shoes, nails, gas and the like. */
    MATERIALS("materials"),
    /** Visits that it brought about afterwards. */
    CALLBACKS("callbacks"),
    /** It is done for nothing. */
    FREE("no charge");

    private final String word;

    Loss(String word) {
      this.word = word;
    }

    /** The reason in a word, as files have it. */
    public String word() {
      return word;
    }
  }
}

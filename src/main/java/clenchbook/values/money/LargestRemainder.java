package clenchbook.values.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Splits an amount in proportion to weights so that the parts add to the whole to the last minor
 * unit: each part is cut down to the minor unit, then the units left over go to the largest cut-off
 * remainders, ties to the earlier part.
 */
public final class LargestRemainder {
  private LargestRemainder() {}

  /**
   * Splits in proportion to weights.
   *
   * @param total the whole; rounded to the minor unit first when it is finer; may be negative
   * @param weights one per part, none negative; all zero counts as equal weights
   * @param unit the minor unit
   * @return as many parts as weights, in their order, adding to the rounded total; empty for none
   */
  public static List<BigDecimal> split(BigDecimal total, List<BigDecimal> weights, MinorUnit unit) {
    BigDecimal whole = unit.round(total);
    if (weights.size() == 1) {
      return List.of(whole);
    }
    if (whole.signum() < 0) {
      return split(whole.negate(), weights, unit).stream().map(BigDecimal::negate).toList();
    }
    BigDecimal sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    if (sum.signum() == 0) {
      return weights.isEmpty() ? List.of() : split(whole, ones(weights.size()), unit);
    }
    return spread(whole, weights, sum, unit);
  }

  /**
   * Splits into equal parts.
   *
   * @param total the whole
   * @param parts how many, at least one
   * @param unit the minor unit
   * @return the parts; earlier ones bear the odd minor units
   */
  public static List<BigDecimal> splitEqually(BigDecimal total, int parts, MinorUnit unit) {
    return split(total, ones(parts), unit);
  }

  private static List<BigDecimal> ones(int size) {
    return Collections.nCopies(size, BigDecimal.ONE);
  }

  private static List<BigDecimal> spread(
      BigDecimal whole, List<BigDecimal> weights, BigDecimal sum, MinorUnit unit) {
    List<BigDecimal> parts = new ArrayList<>();
    List<BigDecimal> remainders = new ArrayList<>();
    BigDecimal units = whole.movePointRight(unit.digits());
    BigDecimal left = units;
    for (BigDecimal weight : weights) {
      // Whole units and an exact remainder: a quotient cut to some digits would break ties.
      BigDecimal[] cut = units.multiply(weight).divideAndRemainder(sum);
      parts.add(cut[0].movePointLeft(unit.digits()).setScale(unit.digits()));
      remainders.add(cut[1]);
      left = left.subtract(cut[0]);
    }
    giveOut(left.intValueExact(), parts, remainders, unit);
    return List.copyOf(parts);
  }

  private static void giveOut(
      int units, List<BigDecimal> parts, List<BigDecimal> remainders, MinorUnit unit) {
    BigDecimal step = BigDecimal.ONE.movePointLeft(unit.digits());
    IntStream.range(0, parts.size())
        .boxed()
        .sorted(Comparator.comparing(remainders::get, Comparator.reverseOrder()))
        .limit(units)
        .forEach(index -> parts.set(index, parts.get(index).add(step)));
  }
}

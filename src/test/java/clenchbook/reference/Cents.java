package clenchbook.reference;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Rounding half-up to cents, and splitting by largest remainder with ties to the earlier. */
final class Cents {
  static final MathContext EXACT = new MathContext(50, RoundingMode.HALF_UP);
  static final BigDecimal CENT = new BigDecimal("0.01");
  static final BigDecimal HUNDRED = new BigDecimal(100);
  static final BigDecimal SIXTY = new BigDecimal(60);

  private Cents() {}

  static BigDecimal round(BigDecimal amount) {
    return amount.setScale(30, RoundingMode.HALF_UP).setScale(2, RoundingMode.HALF_UP);
  }

  static BigDecimal over(BigDecimal a, BigDecimal b) {
    return a.divide(b, EXACT);
  }

  static BigDecimal of(long count) {
    return BigDecimal.valueOf(count);
  }

  static BigDecimal sum(List<BigDecimal> parts) {
    BigDecimal sum = BigDecimal.ZERO;
    for (BigDecimal part : parts) {
      sum = sum.add(part);
    }
    return sum;
  }

  /** Splits a whole number of cents in proportion to weights; equal parts where all are nought. */
  static List<BigDecimal> split(BigDecimal whole, List<BigDecimal> weights) {
    BigDecimal all = sum(weights);
    List<BigDecimal> exact = new ArrayList<>();
    for (BigDecimal weight : weights) {
      exact.add(
          all.signum() == 0 ? over(whole, of(weights.size())) : over(whole.multiply(weight), all));
    }
    List<BigDecimal> parts = new ArrayList<>();
    for (BigDecimal part : exact) {
      parts.add(part.setScale(12, RoundingMode.HALF_UP).setScale(2, RoundingMode.FLOOR));
    }
    BigDecimal left = whole.subtract(sum(parts));
    while (left.signum() > 0) {
      int best = -1;
      BigDecimal most = new BigDecimal(-1);
      for (int i = 0; i < parts.size(); i++) {
        BigDecimal rest = exact.get(i).subtract(parts.get(i)).setScale(12, RoundingMode.HALF_UP);
        if (rest.compareTo(most) > 0) {
          most = rest;
          best = i;
        }
      }
      parts.set(best, parts.get(best).add(CENT));
      left = left.subtract(CENT);
    }
    return parts;
  }

  static List<BigDecimal> equally(BigDecimal whole, int count) {
    List<BigDecimal> ones = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      ones.add(BigDecimal.ONE);
    }
    return split(whole, ones);
  }
}

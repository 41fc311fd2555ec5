package clenchbook.stock.cutting;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * The enlarged pieces and bar, divided by what they have in common so that tables over the bar's
 * length stay short. The bar is rounded down by it, which loses nothing: no sum of pieces reaches
 * into the remainder.
 *
 * @param capacity the bar with one kerf
 * @param sizes each piece with one kerf, longest first
 */
@SuppressWarnings("ArrayRecordComponent") // package-private, never compared, never handed out
record Sizes(long capacity, long[] sizes) {

  static Sizes of(CuttingOrder order) {
    long[] sizes = order.sizes();
    long common =
        Arrays.stream(sizes)
            .mapToObj(BigInteger::valueOf)
            .reduce(BigInteger.ZERO, BigInteger::gcd)
            .longValueExact();
    return new Sizes(
        order.capacity() / common, Arrays.stream(sizes).map(size -> size / common).toArray());
  }

  int kinds() {
    return sizes.length;
  }

  long total(int[] counts) {
    long total = 0;
    for (int i = 0; i < sizes.length; i++) {
      total += counts[i] * sizes[i];
    }
    return total;
  }

  /** Gives the pattern filled up, longest first, with whatever of the demand still fits. */
  int[] filledUp(int[] pattern, int[] demand) {
    int[] filled = pattern.clone();
    long left = capacity - total(filled);
    for (int i = 0; i < sizes.length; i++) {
      long more = Math.min(demand[i] - filled[i], left / sizes[i]);
      filled[i] += (int) more;
      left -= more * sizes[i];
    }
    return filled;
  }

  static int[] less(int[] demand, int[] pattern) {
    int[] rest = demand.clone();
    for (int i = 0; i < rest.length; i++) {
      rest[i] -= pattern[i];
    }
    return rest;
  }
}

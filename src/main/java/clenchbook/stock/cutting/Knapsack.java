package clenchbook.stock.cutting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The most valuable single bar: exact dynamic programming over the bar's length, with at most so
 * many of each piece.
 */
final class Knapsack {

  private final Sizes sizes;
  private final int capacity;

  Knapsack(Sizes sizes) {
    this.sizes = sizes;
    this.capacity = Math.toIntExact(sizes.capacity());
  }

  /**
   * The best bar and its value.
   *
   * @param value sum of its pieces' values
   * @param counts how many of each piece
   */
  @SuppressWarnings("ArrayRecordComponent") // package-private, never compared
  record Best(long value, int[] counts) {}

  /** Finds the best bar under these values; pieces worth nothing are left out. */
  Best best(long[] values, int[] atMost, Work work) {
    long[] reach = new long[capacity + 1];
    List<Bundle> bundles = bundles(values, atMost);
    List<BitSet> taken = new ArrayList<>();
    for (Bundle bundle : bundles) {
      taken.add(offer(bundle, reach));
      work.charge(capacity);
    }
    return new Best(reach[capacity], unpack(bundles, taken));
  }

  private static BitSet offer(Bundle bundle, long[] reach) {
    BitSet taken = new BitSet(reach.length);
    for (int length = reach.length - 1; length >= bundle.size(); length--) {
      long with = reach[length - bundle.size()] + bundle.value();
      if (with > reach[length]) {
        reach[length] = with;
        taken.set(length);
      }
    }
    return taken;
  }

  private int[] unpack(List<Bundle> bundles, List<BitSet> taken) {
    int[] counts = new int[sizes.kinds()];
    int length = capacity;
    for (int b = bundles.size() - 1; b >= 0; b--) {
      if (taken.get(b).get(length)) {
        counts[bundles.get(b).kind()] += bundles.get(b).count();
        length -= bundles.get(b).size();
      }
    }
    return counts;
  }

  /** Splits each piece's limit into bundles of 1, 2, 4 … so that every number up to it is a sum. */
  private List<Bundle> bundles(long[] values, int[] atMost) {
    List<Bundle> bundles = new ArrayList<>();
    for (int kind = 0; kind < sizes.kinds(); kind++) {
      long size = sizes.sizes()[kind];
      int left = values[kind] <= 0 ? 0 : (int) Math.min(atMost[kind], capacity / size);
      for (int count = 1; left > 0; count *= 2) {
        int take = Math.min(count, left);
        bundles.add(new Bundle(kind, take, Math.toIntExact(take * size), take * values[kind]));
        left -= take;
      }
    }
    return bundles;
  }

  private record Bundle(int kind, int count, int size, long value) {}
}

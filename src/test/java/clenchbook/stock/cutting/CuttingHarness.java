package clenchbook.stock.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * Measures how long plans take and how many are proved optimal; run by hand, not part of the tests.
 *
 * <p>Lengths in hundredths of a millimetre: shoes of 280 mm and up from bars of 3 to 4.5 m with a
 * kerf of 2 mm. Prints one line for each mix of lengths, and for sets of three pieces that fill a
 * bar exactly, the hardest kind.
 */
final class CuttingHarness {

  private static final int ORDERS = 100;

  private CuttingHarness() {}

  public static void main(String[] arguments) {
    List<CuttingOrder> first = List.of(shoes(99, 60, 1, 80));
    System.out.println("first plan of the process: " + measure(first));
    int[][] mixes = {{60, 1, 80}, {60, 5, 17}, {60, 10, 8}, {120, 5, 17}, {200, 5, 17}};
    for (int[] mix : mixes) {
      List<CuttingOrder> orders = new ArrayList<>();
      for (int seed = 0; seed < ORDERS; seed++) {
        orders.add(shoes(seed, mix[0], mix[1], mix[2]));
      }
      System.out.println(
          "pieces, step mm, lengths " + Arrays.toString(mix) + ": " + measure(orders));
    }
    List<CuttingOrder> threes = new ArrayList<>();
    for (int seed = 0; seed < ORDERS; seed++) {
      threes.add(threes(seed));
    }
    System.out.println("60 pieces in exact threes: " + measure(threes));
  }

  private static String measure(List<CuttingOrder> orders) {
    double worst = 0;
    int proved = 0;
    for (CuttingOrder order : orders) {
      long start = System.nanoTime();
      CuttingPlan plan = CuttingSolver.solve(order);
      worst = Math.max(worst, (System.nanoTime() - start) / 1e6);
      proved += plan.optimal() ? 1 : 0;
    }
    return proved + " of " + orders.size() + " proved, slowest " + Math.round(worst) + " ms";
  }

  private static CuttingOrder shoes(long seed, int pieces, int stepMm, int lengths) {
    Random random = new Random(seed);
    List<Long> wanted = new ArrayList<>();
    for (int n = 0; n < pieces; n++) {
      wanted.add(28_000L + 100L * stepMm * random.nextInt(lengths));
    }
    return order(300_000 + 30_000 * random.nextInt(6), 200, wanted);
  }

  private static CuttingOrder threes(long seed) {
    Random random = new Random(seed);
    List<Long> wanted = new ArrayList<>();
    for (int n = 0; n < 20; n++) {
      long first = 250 + random.nextInt(130);
      long second = 250 + random.nextInt(125);
      wanted.addAll(List.of(first, second, 1_000 - first - second));
    }
    return order(1_000, 0, wanted);
  }

  private static CuttingOrder order(long bar, long kerf, List<Long> wanted) {
    Map<Long, Integer> tally = new TreeMap<>(Comparator.reverseOrder());
    wanted.forEach(length -> tally.merge(length, 1, Integer::sum));
    List<CuttingOrder.Piece> pieces = new ArrayList<>();
    tally.forEach((length, count) -> pieces.add(new CuttingOrder.Piece(length, count)));
    return new CuttingOrder(bar, kerf, pieces);
  }
}

package clenchbook.stock.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CuttingSolverTest {

  /** Guards against a search that never ends; says nothing about speed. */
  private static final Duration HANGING = Duration.ofMinutes(2);

  // Wikipedia, "Cutting stock problem", example: 13 widths from rolls of 5,600, optimum 73.
  @Test
  void the_paper_machine_needs_seventy_three_rolls() {
    CuttingPlan plan = solve(paperMachine());
    assertEquals(73, plan.bars());
    assertTrue(plan.optimal());
    assertEquals(407_160, plan.order().totalLength());
    assertEquals(73 * 5_600 - 407_160, plan.waste());
  }

  // Recomputed: longest-first needs 82 rolls, 12 % more (no published source).
  @Test
  void longest_first_needs_eighty_two_rolls_for_the_paper_machine() {
    assertEquals(82, firstFit(paperMachine()));
  }

  // Chvatal, Linear Programming (1983), and the GAMS model library (stock and optimum from
  // memory): relaxation 452.25, integer optimum 453.
  @Test
  void chvatals_four_widths_need_four_hundred_and_fifty_three_rolls() {
    CuttingPlan plan = solve(fourWidths());
    assertEquals(453, plan.bars());
    assertTrue(plan.optimal());
    assertEquals(485, firstFit(fourWidths()));
  }

  // Own example, recomputed by integer programming: longest-first wastes a fifth bar.
  @Test
  void shoe_lengths_from_three_metre_bars_need_four_bars_where_longest_first_takes_five() {
    CuttingOrder order = order(3_000, 2, 290, 14, 310, 10, 330, 8, 350, 6);
    CuttingPlan plan = solve(order);
    assertEquals(4, plan.bars());
    assertTrue(plan.optimal());
    assertEquals(5, firstFit(order));
  }

  @Test
  void the_last_piece_needs_no_cut_when_it_ends_with_the_bar() {
    assertEquals(1, solve(order(1_004, 2, 334, 1, 333, 2)).bars());
    assertEquals(2, solve(order(1_003, 2, 334, 1, 333, 2)).bars());
  }

  @Test
  void the_offcut_is_what_the_last_cut_leaves() {
    CuttingPlan plan = solve(order(1_000, 3, 300, 3));
    assertEquals(1_000 - 3 * 303, plan.patterns().get(0).offcut());
    assertEquals(0, solve(order(606, 3, 200, 2, 199, 1)).patterns().get(0).offcut());
  }

  @Test
  void nothing_to_cut_needs_no_bar() {
    CuttingPlan plan = solve(order(3_000, 2));
    assertEquals(0, plan.bars());
    assertTrue(plan.optimal());
  }

  @Test
  void a_piece_longer_than_the_bar_is_refused() {
    assertThrows(IllegalArgumentException.class, () -> order(3_000, 2, 3_001, 1));
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
  void sixty_shoes_are_planned_and_proved(long seed) {
    CuttingOrder order = sixtyShoes(seed);
    CuttingPlan plan = solve(order);
    assertTrue(plan.optimal(), () -> "seed " + seed + " gap " + plan.gap());
    assertCutsTheOrder(plan);
  }

  // Outside oracle: trying every way to put the pieces into bars, on orders small enough for it.
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30})
  void small_orders_agree_with_trying_everything(long seed) {
    Random random = new Random(seed);
    List<Long> lengths = new ArrayList<>();
    for (int n = 0; n < 9; n++) {
      lengths.add(20L + random.nextInt(55));
    }
    CuttingOrder order = order(100, random.nextInt(3), tally(lengths));
    CuttingPlan plan = solve(order);
    assertTrue(plan.optimal(), "seed " + seed);
    assertEquals(everyWay(order), plan.bars(), "seed " + seed);
    assertCutsTheOrder(plan);
  }

  static CuttingOrder paperMachine() {
    return order(
        5_600, 0, 1380, 22, 1520, 25, 1560, 12, 1710, 14, 1820, 18, 1880, 18, 1930, 20, 2000, 10,
        2050, 12, 2100, 14, 2140, 16, 2150, 18, 2200, 20);
  }

  static CuttingOrder fourWidths() {
    return order(100, 0, 45, 97, 36, 610, 31, 395, 14, 211);
  }

  static CuttingOrder sixtyShoes(long seed) {
    Random random = new Random(seed);
    List<Long> lengths = new ArrayList<>();
    for (int n = 0; n < 60; n++) {
      lengths.add(280L + 5 * random.nextInt(17));
    }
    return order(3_000 + 300 * random.nextInt(6), 2, tally(lengths));
  }

  private static CuttingPlan solve(CuttingOrder order) {
    return assertTimeoutPreemptively(HANGING, () -> CuttingSolver.solve(order));
  }

  private static int firstFit(CuttingOrder order) {
    return FirstFit.decreasing(Sizes.of(order), order.demand()).size();
  }

  private static void assertCutsTheOrder(CuttingPlan plan) {
    CuttingOrder order = plan.order();
    for (int kind = 0; kind < order.pieces().size(); kind++) {
      int cut = 0;
      for (CuttingPlan.Pattern pattern : plan.patterns()) {
        cut += pattern.bars() * pattern.counts().get(kind);
      }
      assertEquals(order.pieces().get(kind).count(), cut);
    }
    for (CuttingPlan.Pattern pattern : plan.patterns()) {
      long used = -order.kerf();
      for (int kind = 0; kind < order.pieces().size(); kind++) {
        used += pattern.counts().get(kind) * (order.pieces().get(kind).length() + order.kerf());
      }
      assertTrue(used <= order.barLength());
    }
  }

  private static int everyWay(CuttingOrder order) {
    List<Long> pieces = new ArrayList<>();
    order
        .pieces()
        .forEach(
            p -> {
              for (int n = 0; n < p.count(); n++) {
                pieces.add(p.length() + order.kerf());
              }
            });
    return fewest(pieces, 0, new ArrayList<>(), order.barLength() + order.kerf(), pieces.size());
  }

  private static int fewest(List<Long> pieces, int next, List<Long> bars, long bar, int best) {
    if (bars.size() >= best) {
      return best;
    }
    if (next == pieces.size()) {
      return bars.size();
    }
    int fewest = best;
    for (int b = 0; b < bars.size(); b++) {
      if (bars.get(b) >= pieces.get(next)) {
        bars.set(b, bars.get(b) - pieces.get(next));
        fewest = fewest(pieces, next + 1, bars, bar, fewest);
        bars.set(b, bars.get(b) + pieces.get(next));
      }
    }
    bars.add(bar - pieces.get(next));
    fewest = fewest(pieces, next + 1, bars, bar, fewest);
    bars.remove(bars.size() - 1);
    return fewest;
  }

  private static int[] tally(List<Long> lengths) {
    Map<Long, Integer> counts = new TreeMap<>();
    lengths.forEach(length -> counts.merge(length, 1, Integer::sum));
    return counts.entrySet().stream()
        .flatMapToInt(e -> java.util.stream.IntStream.of((int) (long) e.getKey(), e.getValue()))
        .toArray();
  }

  private static CuttingOrder order(long bar, long kerf, int... lengthsAndCounts) {
    List<CuttingOrder.Piece> pieces = new ArrayList<>();
    for (int i = 0; i < lengthsAndCounts.length; i += 2) {
      pieces.add(new CuttingOrder.Piece(lengthsAndCounts[i], lengthsAndCounts[i + 1]));
    }
    pieces.sort(Comparator.comparingLong(CuttingOrder.Piece::length).reversed());
    return new CuttingOrder(bar, kerf, pieces);
  }
}

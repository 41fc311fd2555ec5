package clenchbook.stock.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Complete depth-first search for a plan of a given number of bars.
 *
 * <p>Every plan has a bar that holds the longest piece still wanted, and that bar may be taken as
 * full as the demand allows, since moving a piece forward never hurts. So at each step all such
 * full bars are tried, those of the relaxation first; a step is given up when its relaxation needs
 * more bars than are left, or when the same rest has failed before.
 */
final class PlanSearch {

  private final Sizes sizes;
  private final Work work;
  private final Deque<int[]> bars = new ArrayDeque<>();
  private final Map<List<Integer>, Integer> failed = new HashMap<>();

  PlanSearch(Sizes sizes, Work work) {
    this.sizes = sizes;
    this.work = work;
  }

  /**
   * Completes a plan that begins with these bars.
   *
   * @return all its bars, the given ones among them; empty if there is none or the work is spent
   */
  Optional<List<int[]>> complete(List<int[]> begun, int[] demand, int target) {
    int[] rest = demand;
    for (int[] bar : begun) {
      rest = Sizes.less(rest, bar);
    }
    bars.clear();
    if (begun.size() > target || !search(rest, target - begun.size())) {
      return Optional.empty();
    }
    List<int[]> all = new ArrayList<>(begun);
    all.addAll(bars);
    return Optional.of(all);
  }

  private boolean search(int[] demand, int left) {
    long total = sizes.total(demand);
    if (total == 0) {
      return true;
    }
    if (total > left * sizes.capacity() || work.spent()) {
      return false;
    }
    List<Integer> key = Arrays.stream(demand).boxed().toList();
    if (failed.getOrDefault(key, 0) >= left) {
      return false;
    }
    boolean found = left == 1 ? take(demand, demand, left) : branch(demand, left);
    if (!found && !work.spent()) {
      failed.merge(key, left, Math::max);
    }
    return found;
  }

  private boolean branch(int[] demand, int left) {
    Relaxation relaxation = Relaxation.of(sizes, demand, work);
    if (relaxation.lowerBound() > left) {
      return false;
    }
    int longest = longest(demand);
    for (int[] pattern : relaxation.patternsByUse()) {
      if (pattern[longest] > 0 && take(sizes.filledUp(pattern, demand), demand, left)) {
        return true;
      }
    }
    long spare = left * sizes.capacity() - sizes.total(demand);
    int[] start = new int[sizes.kinds()];
    return fullBars(
        start, longest, sizes.capacity(), demand, spare, longest, bar -> take(bar, demand, left));
  }

  private boolean take(int[] bar, int[] demand, int left) {
    bars.addLast(bar);
    if (search(Sizes.less(demand, bar), left - 1)) {
      return true;
    }
    bars.removeLast();
    return false;
  }

  /**
   * Offers every full bar with the longest piece, most of the long pieces first, until one is
   * taken.
   */
  private boolean fullBars(
      int[] bar,
      int kind,
      long room,
      int[] demand,
      long spare,
      int longest,
      Predicate<int[]> offer) {
    if (kind == bar.length) {
      return room <= spare && isFull(bar, room, demand) && offer.test(bar.clone());
    }
    work.charge(bar.length);
    int most = (int) Math.min(demand[kind], room / sizes.sizes()[kind]);
    int least = kind == longest ? 1 : 0;
    for (int count = most; count >= least && !work.spent(); count--) {
      bar[kind] = count;
      long left = room - count * sizes.sizes()[kind];
      if (fullBars(bar, kind + 1, left, demand, spare, longest, offer)) {
        return true;
      }
    }
    bar[kind] = 0;
    return false;
  }

  private boolean isFull(int[] bar, long room, int[] demand) {
    for (int kind = 0; kind < bar.length; kind++) {
      if (bar[kind] < demand[kind] && sizes.sizes()[kind] <= room) {
        return false;
      }
    }
    return true;
  }

  private static int longest(int[] demand) {
    int kind = 0;
    while (demand[kind] == 0) {
      kind++;
    }
    return kind;
  }
}

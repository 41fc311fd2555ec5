package clenchbook.stock.cutting;

import java.util.ArrayList;
import java.util.List;

/** The workshop's habit: longest piece first, each into the first bar that still has room. */
final class FirstFit {

  private FirstFit() {}

  /** Gives one array of counts for each bar. */
  static List<int[]> decreasing(Sizes sizes, int[] demand) {
    List<int[]> bars = new ArrayList<>();
    List<Long> room = new ArrayList<>();
    for (int kind = 0; kind < sizes.kinds(); kind++) {
      for (int n = 0; n < demand[kind]; n++) {
        place(sizes, kind, bars, room);
      }
    }
    return bars;
  }

  private static void place(Sizes sizes, int kind, List<int[]> bars, List<Long> room) {
    long size = sizes.sizes()[kind];
    int bar = 0;
    while (bar < bars.size() && room.get(bar) < size) {
      bar++;
    }
    if (bar == bars.size()) {
      bars.add(new int[sizes.kinds()]);
      room.add(sizes.capacity());
    }
    bars.get(bar)[kind]++;
    room.set(bar, room.get(bar) - size);
  }
}

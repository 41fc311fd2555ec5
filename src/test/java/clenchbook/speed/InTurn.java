package clenchbook.speed;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Processes run in turn, again and again, so that a busy minute falls on all of them alike. */
final class InTurn {
  private InTurn() {}

  /** The median of each one's seconds. */
  static List<Double> seconds(int runs, FreshProcess... processes)
      throws IOException, InterruptedException {
    double[][] times = new double[processes.length][runs];
    for (int run = 0; run < runs; run++) {
      for (int each = 0; each < processes.length; each++) {
        times[each][run] = processes[each].run().seconds();
      }
    }
    return Arrays.stream(times).map(InTurn::median).toList();
  }

  /** The median of each number that a process prints in one line. */
  static List<Double> printed(int runs, FreshProcess process)
      throws IOException, InterruptedException {
    List<double[]> lines = new ArrayList<>();
    for (int run = 0; run < runs; run++) {
      String said = process.run().said();
      lines.add(Arrays.stream(said.split(" ")).mapToDouble(Double::parseDouble).toArray());
    }
    List<Double> medians = new ArrayList<>();
    for (int at = 0; at < lines.get(0).length; at++) {
      int column = at;
      medians.add(median(lines.stream().mapToDouble(line -> line[column]).toArray()));
    }
    return List.copyOf(medians);
  }

  static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}

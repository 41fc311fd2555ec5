package clenchbook.speed;

import clenchbook.reading.GatherPass;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The month's end of ever longer lives, in 256 MB, against gathering the longest alone. */
final class LifetimeSpeed {
  private static final int[] LIVES = {15_000, 30_000, 60_000};
  private static final String HEAP = "-Xmx256m";

  private LifetimeSpeed() {}

  /**
   * Measures the lives in turn.
   *
   * @param archived the program as the launcher starts it
   */
  static List<Row> rows(Places places, int runs, JavaStart archived)
      throws IOException, InterruptedException {
    List<String> longest = List.of(places.life(LIVES[LIVES.length - 1]).toString());
    JavaStart gather = JavaStart.of(places, GatherPass.class, LauncherSettings.of(places));
    JavaStart month = archived.set(HEAP);
    List<FreshProcess> processes = new ArrayList<>();
    processes.add(month.with(places.monthEnd(places.life(1))));
    for (int visits : LIVES) {
      processes.add(month.with(places.monthEnd(places.life(visits))));
    }
    processes.add(gather.archived(longest).set(HEAP).with(longest));
    List<Double> seconds = InTurn.seconds(runs, processes.toArray(FreshProcess[]::new));
    return List.of(
        Row.ratio(
            "Month-end, 60,000 visits, 256 MB (floor: gathering it alone)",
            "at most 3",
            seconds.get(LIVES.length),
            seconds.get(LIVES.length + 1),
            "s"),
        slope(seconds));
  }

  private static Row slope(List<Double> seconds) {
    double empty = seconds.get(0);
    double[] more = new double[LIVES.length];
    for (int i = 0; i < LIVES.length; i++) {
      more[i] = seconds.get(i + 1) - empty;
    }
    String times =
        String.format(
            Locale.ROOT,
            "%.2f; %.2f, %.2f, %.2f s",
            empty,
            seconds.get(1),
            seconds.get(2),
            seconds.get(3));
    return Row.alone(
        "– growth: log–log slope over 15,000, 30,000, 60,000, less a book of one visit",
        "at most 1.05",
        times,
        String.format(Locale.ROOT, "%.2f", LogLogSlope.of(LIVES, more)));
  }
}

package clenchbook.speed;

import java.util.Locale;

/**
 * A row of the table.
 *
 * @param what is measured
 * @param target with its sense, or a dash
 * @param ours with its unit
 * @param floor with its unit, or a dash
 * @param figure that is held against the target
 */
record Row(String what, String target, String ours, String floor, String figure) {
  /** Ours over the floor, both in the same unit. */
  static Row ratio(String what, String target, double ours, double floor, String unit) {
    return new Row(what, target, in(ours, unit), in(floor, unit), times(ours / floor));
  }

  /** A figure without a floor. */
  static Row alone(String what, String target, String ours, String figure) {
    return new Row(what, target, ours, "–", figure);
  }

  static String in(double value, String unit) {
    return String.format(Locale.ROOT, value < 10 ? "%.2f %s" : "%.1f %s", value, unit);
  }

  static String times(double ratio) {
    return String.format(Locale.ROOT, "%.2f ×", ratio);
  }

  String markdown() {
    return "| " + String.join(" | ", what, target, ours, floor, figure) + " |";
  }
}

package clenchbook.workload.hours;

import clenchbook.values.Basis;

/**
 * Minutes by what they rest on.
 *
 * @param measured given by the farrier for that day
 * @param split the farrier's measured Total, split over its parts as the Work's standard minutes
 *     are
 * @param standard from the Work, Materials or Places sheet
 * @param byDefault from a default of the program
 */
public record Minutes(double measured, double split, double standard, double byDefault) {

  /** No minutes. */
  public static final Minutes NONE = new Minutes(0, 0, 0, 0);

  /**
   * Minutes of one basis.
   *
   * @param minutes how many
   * @param basis what they rest on
   * @return the minutes
   */
  public static Minutes of(double minutes, Basis basis) {
    return switch (basis) {
      case MEASURED -> new Minutes(minutes, 0, 0, 0);
      case STANDARD -> new Minutes(0, 0, minutes, 0);
      case DEFAULT -> new Minutes(0, 0, 0, minutes);
    };
  }

  /**
   * Part of a measured total.
   *
   * @param minutes how many
   * @return the minutes
   */
  public static Minutes ofSplit(double minutes) {
    return new Minutes(0, minutes, 0, 0);
  }

  /**
   * The same for a sum over all parts, in which a split total is whole again.
   *
   * @return the minutes, the split ones among the measured
   */
  public Minutes whole() {
    return new Minutes(measured + split, 0, standard, byDefault);
  }

  /**
   * Both together.
   *
   * @param other more minutes
   * @return the sum, basis by basis
   */
  public Minutes plus(Minutes other) {
    return new Minutes(
        measured + other.measured,
        split + other.split,
        standard + other.standard,
        byDefault + other.byDefault);
  }

  /**
   * All of them.
   *
   * @return minutes
   */
  public double total() {
    return measured + split + standard + byDefault;
  }

  /**
   * All of them as hours.
   *
   * @return hours, not rounded
   */
  public double hours() {
    return total() / 60;
  }

  /**
   * The weakest basis that any of them has.
   *
   * @return measured when there are none
   */
  public Basis weakest() {
    if (byDefault > 0) {
      return Basis.DEFAULT;
    }
    return split + standard > 0 ? Basis.STANDARD : Basis.MEASURED;
  }

  /**
   * What they rest on, in words.
   *
   * @return such as {@code measured} or {@code measured 83 %, standard 17 %}; {@code none} for no
   *     minutes
   */
  public String basis() {
    double total = total();
    if (total <= 0) {
      return "none";
    }
    StringBuilder words = new StringBuilder();
    part(words, "measured", measured, total);
    part(words, "measured total split as standard", split, total);
    part(words, "standard", standard, total);
    part(words, "default", byDefault, total);
    return words.toString();
  }

  private static void part(StringBuilder words, String name, double minutes, double total) {
    if (minutes <= 0) {
      return;
    }
    words.append(words.isEmpty() ? "" : ", ").append(name);
    if (minutes < total) {
      words.append(' ').append(Digits.rounded(100 * minutes / total, 1)).append(" %");
    }
  }
}

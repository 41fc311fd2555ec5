package clenchbook.workload.hours;

import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

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
  public Phrase basis() {
    double total = total();
    if (total <= 0) {
      return Phrase.of("none", "workload.basis.none");
    }
    List<Phrase> parts = new ArrayList<>();
    part(parts, measured, Phrase.of("measured", "workload.basis.measured"));
    part(parts, split, Phrase.of("measured total split as standard", "workload.basis.split"));
    part(parts, standard, Phrase.of("standard", "workload.basis.standard"));
    part(parts, byDefault, Phrase.of("default", "workload.basis.byDefault"));
    return Phrase.joined(", ", parts);
  }

  private void part(List<Phrase> parts, double minutes, Phrase name) {
    if (minutes <= 0) {
      return;
    }
    BigDecimal percent = Digits.rounded(100 * minutes / total(), 1);
    parts.add(
        minutes < total()
            ? Phrase.of(
                name.english() + " " + percent + " %", "workload.basis.share", name.said(), percent)
            : name);
  }
}

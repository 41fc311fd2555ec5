package clenchbook.workload.strain;

import clenchbook.book.StrainRating;
import clenchbook.book.Task;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * What the farrier rated of one task. Several rows of one task are its kinds of hand effort; of the
 * other columns the first given counts.
 *
 * @param task which
 * @param efforts the kinds of hand effort that are fully rated
 * @param missing what a started rating of hand effort lacks, as words; empty when nothing
 * @param vibration metres per second squared
 * @param noiseDba A-weighted level
 * @param trunkDegrees how far the trunk is bent forward
 * @param longestHoldSeconds how long the longest hold lasts
 * @param blowsPerShoe hammer blows per shoe
 */
public record TaskRating(
    Task task,
    List<HandEffort> efforts,
    List<String> missing,
    OptionalDouble vibration,
    OptionalDouble noiseDba,
    OptionalDouble trunkDegrees,
    OptionalDouble longestHoldSeconds,
    OptionalDouble blowsPerShoe) {

  /** Copies its lists. */
  public TaskRating {
    efforts = List.copyOf(efforts);
    missing = List.copyOf(missing);
  }

  /**
   * The rating of a task from its rows.
   *
   * @param task which
   * @param rows all rows of Strain, in row order; those of other tasks are left out
   * @return the rating; everything empty when no row rates the task
   */
  static TaskRating of(Task task, List<StrainRating> rows) {
    List<StrainRating> own = rows.stream().filter(row -> row.task() == task).toList();
    List<HandEffort> efforts = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (StrainRating row : own) {
      List<String> gaps = gaps(row);
      if (gaps.isEmpty()) {
        efforts.add(effort(row));
      } else if (gaps.size() < COLUMNS) {
        missing.addAll(gaps);
      }
    }
    return new TaskRating(
        task,
        efforts,
        missing.stream().distinct().toList(),
        first(own, StrainRating::vibration),
        first(own, StrainRating::noiseDba),
        first(own, StrainRating::trunkDegrees),
        first(own, StrainRating::longestHoldSeconds),
        first(own, StrainRating::blowsPerShoe));
  }

  private static final int COLUMNS = 4;

  private static List<String> gaps(StrainRating row) {
    List<String> gaps = new ArrayList<>();
    gap(gaps, row.effortCr10(), "Effort CR10");
    gap(gaps, row.effortsPerMin(), "Efforts per min");
    gap(gaps, row.secondsPerEffort(), "Seconds per effort");
    gap(gaps, row.wristDegrees(), "Wrist deg");
    if (gaps.isEmpty() && direction(row).isEmpty()) {
      gaps.add("Wrist direction");
    }
    return gaps;
  }

  private static void gap(List<String> gaps, Optional<BigDecimal> cell, String heading) {
    if (cell.isEmpty()) {
      gaps.add(heading);
    }
  }

  /** A straight wrist needs no direction. */
  private static Optional<WristDirection> direction(StrainRating row) {
    String word = row.wristDirection().strip().toLowerCase(Locale.ROOT);
    if (word.startsWith("flex")) {
      return Optional.of(WristDirection.FLEXION);
    }
    boolean straight = row.wristDegrees().map(BigDecimal::signum).orElse(0) == 0;
    return word.startsWith("ext") || straight
        ? Optional.of(WristDirection.EXTENSION)
        : Optional.empty();
  }

  private static HandEffort effort(StrainRating row) {
    return new HandEffort(
        row.effortCr10().orElseThrow().doubleValue(),
        row.effortsPerMin().orElseThrow().doubleValue(),
        row.secondsPerEffort().orElseThrow().doubleValue(),
        row.wristDegrees().orElseThrow().doubleValue(),
        direction(row).orElseThrow());
  }

  private static OptionalDouble first(
      List<StrainRating> rows, Function<StrainRating, Optional<BigDecimal>> column) {
    return rows.stream()
        .map(column)
        .flatMap(Optional::stream)
        .mapToDouble(BigDecimal::doubleValue)
        .findFirst();
  }
}

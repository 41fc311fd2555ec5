package clenchbook.jobs;

import clenchbook.book.HorseRow;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One horse with all its rows: one owner, several sharers, or owners one after another.
 *
 * @param id which horse
 * @param rows its rows of Horses, in row order, at least one
 */
public record Horse(HorseId id, List<HorseRow> rows) {
  /** Copies its list. */
  public Horse {
    rows = List.copyOf(rows);
  }

  /**
   * The rows in force on a day, From and Until inclusive.
   *
   * @param day the day
   * @return in row order; empty when nobody owned it that day
   */
  public List<HorseRow> on(LocalDate day) {
    return rows.stream().filter(row -> covers(row, day)).toList();
  }

  /**
   * The row that speaks for the horse on a day: the first in force, else the latest before, else
   * the first.
   *
   * @param day the day
   * @return its row
   */
  public HorseRow rowAt(LocalDate day) {
    return on(day).stream().findFirst().or(() -> latestBefore(day)).orElseGet(() -> rows.get(0));
  }

  private Optional<HorseRow> latestBefore(LocalDate day) {
    return rows.stream()
        .filter(row -> row.until().isPresent() && row.until().get().isBefore(day))
        .max(Comparator.comparing(row -> row.until().orElse(LocalDate.MIN)));
  }

  /**
   * Whether anybody keeps the horse on a day.
   *
   * @param day the day
   * @return false once it is sold away or dead, or before its first row begins
   */
  public boolean kept(LocalDate day) {
    return !on(day).isEmpty();
  }

  static boolean covers(HorseRow row, LocalDate day) {
    return row.from().map(from -> !day.isBefore(from)).orElse(true)
        && row.until().map(until -> !day.isAfter(until)).orElse(true);
  }

  static boolean overlap(HorseRow one, HorseRow other) {
    return !startOf(one).isAfter(endOf(other)) && !startOf(other).isAfter(endOf(one));
  }

  static LocalDate startOf(HorseRow row) {
    return row.from().orElse(LocalDate.MIN);
  }

  static LocalDate endOf(HorseRow row) {
    return row.until().orElse(LocalDate.MAX);
  }
}

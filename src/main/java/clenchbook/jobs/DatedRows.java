package clenchbook.jobs;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Rows that each count from a date on, by key: the newest on or before a day counts; of two from
 * one date the lower row counts.
 *
 * @param <K> the key
 * @param <R> the row
 */
final class DatedRows<K, R> {
  private final Map<K, List<R>> rows = new HashMap<>();
  private final List<R> overridden = new ArrayList<>();
  private final Function<R, LocalDate> from;

  DatedRows(List<R> all, Function<R, K> key, Function<R, Optional<LocalDate>> from) {
    this.from = row -> from.apply(row).orElse(LocalDate.MIN);
    for (R row : all) {
      add(rows.computeIfAbsent(key.apply(row), unused -> new ArrayList<>()), row);
    }
    rows.values().forEach(list -> list.sort(Comparator.comparing(this.from)));
  }

  private void add(List<R> list, R row) {
    boolean twice = list.removeIf(earlier -> from.apply(earlier).equals(from.apply(row)));
    if (twice) {
      overridden.add(row);
    }
    list.add(row);
  }

  /** The row in force, if any. */
  Optional<R> find(K key, LocalDate day) {
    List<R> list = rows.getOrDefault(key, List.of());
    for (int index = list.size() - 1; index >= 0; index--) {
      if (!from.apply(list.get(index)).isAfter(day)) {
        return Optional.of(list.get(index));
      }
    }
    return Optional.empty();
  }

  boolean knows(K key) {
    return rows.containsKey(key);
  }

  /** Any row of the key, whatever its date. */
  Optional<R> any(K key) {
    List<R> list = rows.getOrDefault(key, List.of());
    return list.isEmpty() ? Optional.empty() : Optional.of(list.get(0));
  }

  /** Rows that override an earlier row of one key and date, in row order. */
  List<R> overriding() {
    return List.copyOf(overridden);
  }
}

package clenchbook.reading.proposal;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.words.SameWords;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What the cells of a column have in common: how many of them look like what. */
final class ColumnProfile {
  private static final int HUNDRED = 100;

  private final Map<Trait, Integer> counts = new EnumMap<>(Trait.class);
  private final SortedMap<Integer, BigDecimal> numbers = new TreeMap<>();
  private final Map<Integer, String> texts = new LinkedHashMap<>();
  private final Map<String, Integer> distinct = new LinkedHashMap<>();
  private final List<BigDecimal> sorted;
  private int filled;

  private ColumnProfile(Map<Integer, Cell> cells) {
    Map<String, CellTraits> known = new HashMap<>();
    cells.forEach(
        (row, cell) -> {
          CellTraits traits =
              cell instanceof Cell.Text text
                  ? known.computeIfAbsent(text.text(), unused -> CellTraits.of(cell))
                  : CellTraits.of(cell);
          add(row, cell, traits);
        });
    this.sorted = new ArrayList<>(numbers.values());
    sorted.sort(null);
  }

  static ColumnProfile of(Column column) {
    return new ColumnProfile(column.cells());
  }

  private void add(int row, Cell cell, CellTraits traits) {
    filled++;
    traits.traits().forEach(trait -> counts.merge(trait, 1, Integer::sum));
    traits.number().ifPresent(number -> numbers.put(row, number));
    String bare = SameWords.bare(cell.shown());
    texts.put(row, bare);
    distinct.merge(bare, 1, Integer::sum);
  }

  /** How many cells hold something. */
  int filled() {
    return filled;
  }

  boolean isEmpty() {
    return filled == 0;
  }

  /** Of a hundred cells that hold something, how many look so. */
  int share(Trait trait) {
    return filled == 0 ? 0 : counts.getOrDefault(trait, 0) * HUNDRED / filled;
  }

  /** How many different values there are. */
  int distinct() {
    return distinct.size();
  }

  /** The different values, bare, each with how many cells hold it. */
  Map<String, Integer> values() {
    return distinct;
  }

  /** The values by row, bare. */
  Map<Integer, String> texts() {
    return texts;
  }

  /** The numbers by row. */
  SortedMap<Integer, BigDecimal> numbers() {
    return numbers;
  }

  /** The number in the middle; empty without numbers. */
  Optional<BigDecimal> median() {
    return sorted.isEmpty() ? Optional.empty() : Optional.of(sorted.get(sorted.size() / 2));
  }

  /** Whether the middle number lies between these. */
  boolean medianIn(long least, long most) {
    return median()
        .filter(value -> value.compareTo(BigDecimal.valueOf(least)) >= 0)
        .filter(value -> value.compareTo(BigDecimal.valueOf(most)) <= 0)
        .isPresent();
  }

  /** Of a hundred numbers, how many lie between these. */
  int shareIn(long least, long most) {
    long inside =
        sorted.stream()
            .filter(value -> value.compareTo(BigDecimal.valueOf(least)) >= 0)
            .filter(value -> value.compareTo(BigDecimal.valueOf(most)) <= 0)
            .count();
    return sorted.isEmpty() ? 0 : (int) (inside * HUNDRED / sorted.size());
  }

  /** Of a hundred numbers, how many are one more than the number above them. */
  int countedUp() {
    int steps = 0;
    Optional<BigDecimal> before = Optional.empty();
    for (BigDecimal value : numbers.values()) {
      steps += before.filter(b -> b.add(BigDecimal.ONE).compareTo(value) == 0).isPresent() ? 1 : 0;
      before = Optional.of(value);
    }
    return numbers.size() < 3 ? 0 : steps * HUNDRED / (numbers.size() - 1);
  }

  /** Of a hundred numbers, how many are not smaller than the number above them. */
  int rising() {
    int steps = 0;
    Optional<BigDecimal> before = Optional.empty();
    for (BigDecimal value : numbers.values()) {
      steps += before.filter(b -> b.compareTo(value) <= 0).isPresent() ? 1 : 0;
      before = Optional.of(value);
    }
    return numbers.size() < 3 ? 0 : steps * HUNDRED / (numbers.size() - 1);
  }
}

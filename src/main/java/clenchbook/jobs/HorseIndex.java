package clenchbook.jobs;

import clenchbook.book.HorseRow;
import clenchbook.book.Names;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * The Horses sheet by name: rows with shares are one shared horse, rows without are one horse sold
 * on when their periods do not overlap, else different horses.
 */
public final class HorseIndex {
  private final Map<String, List<Horse>> byName = new LinkedHashMap<>();
  private final List<String> names;

  /**
   * Groups the rows into horses.
   *
   * @param rows the rows of Horses, in row order
   */
  public HorseIndex(List<HorseRow> rows) {
    Map<String, List<HorseRow>> grouped = new LinkedHashMap<>();
    TreeSet<String> sorted = new TreeSet<>(Names.ORDER);
    for (HorseRow row : rows) {
      grouped.computeIfAbsent(Names.key(row.horse()), unused -> new ArrayList<>()).add(row);
      sorted.add(row.horse());
    }
    grouped.forEach((key, group) -> byName.put(key, horses(group)));
    names = List.copyOf(sorted);
  }

  private static List<Horse> horses(List<HorseRow> rows) {
    List<HorseRow> shared = rows.stream().filter(HorseIndex::isShare).toList();
    List<HorseRow> single = rows.stream().filter(row -> !isShare(row)).toList();
    List<Horse> horses = new ArrayList<>();
    if (!shared.isEmpty() && followsOn(single, shared)) {
      horses.add(horse(rows));
      return List.copyOf(horses);
    }
    if (!shared.isEmpty()) {
      horses.add(horse(shared));
    }
    if (followsOn(single, List.of())) {
      horses.addAll(single.isEmpty() ? List.of() : List.of(horse(single)));
    } else {
      single.forEach(row -> horses.add(horse(List.of(row))));
    }
    return List.copyOf(horses);
  }

  private static boolean isShare(HorseRow row) {
    return row.sharePercent().isPresent();
  }

  private static Horse horse(List<HorseRow> rows) {
    return new Horse(new HorseId(rows.get(0).horse(), rows.get(0).owner()), rows);
  }

  /** Whether no two of the single rows overlap, nor any of them a share row. */
  private static boolean followsOn(List<HorseRow> single, List<HorseRow> shared) {
    for (int one = 0; one < single.size(); one++) {
      HorseRow row = single.get(one);
      boolean clash =
          single.subList(one + 1, single.size()).stream().anyMatch(o -> Horse.overlap(row, o))
              || shared.stream().anyMatch(other -> Horse.overlap(row, other));
      if (clash) {
        return false;
      }
    }
    return true;
  }

  /**
   * All horses of a name.
   *
   * @param name the name
   * @return in row order; empty when unknown
   */
  public List<Horse> named(String name) {
    return byName.getOrDefault(Names.key(name), List.of());
  }

  /**
   * All horses.
   *
   * @return in order of their ids
   */
  public List<Horse> all() {
    return byName.values().stream()
        .flatMap(List::stream)
        .sorted(Comparator.comparing(Horse::id))
        .toList();
  }

  /**
   * All names.
   *
   * @return in order, each once
   */
  public List<String> names() {
    return names;
  }

  /**
   * Who pays by the rows in force on a day: each owner's share, or the one billed instead; shares
   * off 100 are scaled; two shares billed to one name are one.
   *
   * @param horse the horse
   * @param day the day
   * @return the payers in row order; empty when nobody owns it that day
   */
  public static List<Payer> payers(Horse horse, LocalDate day) {
    Map<String, BigDecimal> weights = new LinkedHashMap<>();
    Map<String, String> spelled = new LinkedHashMap<>();
    for (HorseRow row : horse.on(day)) {
      String billed = row.billTo().isEmpty() ? row.owner() : row.billTo();
      if (!billed.isEmpty()) {
        spelled.putIfAbsent(Names.key(billed), billed);
        weights.merge(Names.key(billed), row.sharePercent().orElse(Payer.WHOLE), BigDecimal::add);
      }
    }
    BigDecimal sum = weights.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    return weights.entrySet().stream()
        .filter(entry -> entry.getValue().signum() > 0)
        .map(
            entry ->
                new Payer(
                    spelled.getOrDefault(entry.getKey(), entry.getKey()),
                    scaled(entry.getValue(), sum)))
        .toList();
  }

  private static BigDecimal scaled(BigDecimal weight, BigDecimal sum) {
    return sum.compareTo(Payer.WHOLE) == 0
        ? weight
        : weight.multiply(Payer.WHOLE).divide(sum, MathContext.DECIMAL64);
  }
}

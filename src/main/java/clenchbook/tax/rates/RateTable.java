package clenchbook.tax.rates;

import clenchbook.texts.Message;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All rows of one subject in one jurisdiction. For each code the rows follow each other without a
 * gap and without an overlap, from the first day known to the last.
 *
 * @param name the jurisdiction and subject, as {@code us/mileage}
 * @param rows the rows, in the order of code and first day
 */
public record RateTable(String name, List<Rate> rows) {
  private static final Comparator<Rate> BY_CODE_AND_DAY =
      Comparator.comparing(Rate::code).thenComparing(Rate::from);

  /** Sorts the rows; throws {@link UnusableRate} with every gap and overlap there is. */
  public RateTable {
    rows = rows.stream().sorted(BY_CODE_AND_DAY).toList();
    List<Message> faults = faults(rows);
    if (!faults.isEmpty()) {
      throw new UnusableRate(Message.of("tax.refused.table", name, Message.joined("; ", faults)));
    }
  }

  /**
   * What is wrong between the rows: each gap and each overlap, in words, in the order of code and
   * day.
   */
  public static List<Message> faults(List<Rate> rows) {
    List<Message> faults = new ArrayList<>();
    byCode(rows).values().forEach(ofOneCode -> addFaults(ofOneCode, faults));
    return List.copyOf(faults);
  }

  private static void addFaults(List<Rate> ofOneCode, List<Message> faults) {
    for (int i = 1; i < ofOneCode.size(); i++) {
      Rate earlier = ofOneCode.get(i - 1);
      Rate later = ofOneCode.get(i);
      if (!later.from().isAfter(earlier.to())) {
        faults.add(Message.of("tax.refused.overlap", later.code(), later.from()));
      } else if (!later.from().equals(earlier.to().plusDays(1))) {
        faults.add(
            Message.of(
                "tax.refused.gap",
                later.code(),
                earlier.to().plusDays(1),
                later.from().minusDays(1)));
      }
    }
  }

  private static Map<String, List<Rate>> byCode(List<Rate> rows) {
    return rows.stream()
        .sorted(BY_CODE_AND_DAY)
        .collect(Collectors.groupingBy(Rate::code, TreeMap::new, Collectors.toList()));
  }

  /**
   * The row of {@code code} in force on {@code day}; empty where the table has none, whatever other
   * days it has.
   */
  public Optional<Rate> find(String code, LocalDate day) {
    return rows.stream().filter(row -> row.code().equals(code) && row.covers(day)).findFirst();
  }

  /** Every row in force on {@code day}, in the order of code. */
  public List<Rate> inForce(LocalDate day) {
    return rows.stream().filter(row -> row.covers(day)).toList();
  }

  /**
   * This table with the rows of {@code overlay} in the place of its own: for each code and day that
   * the overlay covers, the overlay's row counts; on all other days this table's. Throws as the
   * constructor does.
   */
  public RateTable overlaidWith(List<Rate> overlay) {
    Map<String, List<Rate>> over = byCode(overlay);
    Map<String, List<Rate>> own = byCode(rows);
    List<Rate> merged = new ArrayList<>(overlay);
    own.forEach(
        (code, ofCode) -> merged.addAll(outside(ofCode, over.getOrDefault(code, List.of()))));
    return new RateTable(name, merged);
  }

  private static List<Rate> outside(List<Rate> own, List<Rate> over) {
    List<Rate> left = own;
    for (Rate cover : over) {
      left = left.stream().flatMap(row -> without(row, cover)).toList();
    }
    return left;
  }

  private static Stream<Rate> without(Rate row, Rate cover) {
    if (cover.to().isBefore(row.from()) || cover.from().isAfter(row.to())) {
      return Stream.of(row);
    }
    List<Rate> parts = new ArrayList<>();
    if (row.from().isBefore(cover.from())) {
      parts.add(row.within(row.from(), cover.from().minusDays(1)));
    }
    if (row.to().isAfter(cover.to())) {
      parts.add(row.within(cover.to().plusDays(1), row.to()));
    }
    return parts.stream();
  }

  /** The codes the table knows on any day, sorted. */
  public List<String> codes() {
    return List.copyOf(
        rows.stream().map(Rate::code).collect(Collectors.toCollection(TreeSet::new)));
  }
}

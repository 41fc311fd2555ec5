package clenchbook.tax.rates;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A figure that could not be made because a table has no row for a day: never filled from another
 * year.
 *
 * @param table the table that lacks it, as {@code us/mileage}
 * @param code what was looked for in it
 * @param day the day that no row covers
 */
public record MissingRate(String table, String code, LocalDate day)
    implements Comparable<MissingRate> {

  /** Every code of a table, where the whole table has nothing for the day. */
  public static final String ALL = "";

  /**
   * The sentences to print, one a table: its file, what it lacks for which days, and what to do.
   *
   * @param missing what is missing, in any order
   * @return by table
   */
  public static List<String> sentences(Collection<MissingRate> missing) {
    TreeMap<String, TreeSet<MissingRate>> byTable = new TreeMap<>();
    missing.forEach(
        rate -> byTable.computeIfAbsent(rate.table(), unused -> new TreeSet<>()).add(rate));
    return byTable.values().stream().map(MissingRate::sentence).toList();
  }

  private static String sentence(TreeSet<MissingRate> ofTable) {
    String days = join(ofTable.stream().map(rate -> rate.day().toString()));
    String codes = join(ofTable.stream().map(MissingRate::code).filter(code -> !code.equals(ALL)));
    return "the table rates/"
        + ofTable.first().table()
        + ".csv has no rows for "
        + days
        + (codes.isEmpty() ? "" : " (" + codes + ")")
        + ": no such figure is given; add them, with their source, to a rates folder beside the"
        + " workbook";
  }

  private static String join(Stream<String> words) {
    return words.distinct().sorted().collect(Collectors.joining(", "));
  }

  @Override
  public int compareTo(MissingRate other) {
    int byTable = table.compareTo(other.table);
    int byCode = byTable != 0 ? byTable : code.compareTo(other.code);
    return byCode != 0 ? byCode : day.compareTo(other.day);
  }
}

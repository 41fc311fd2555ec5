package clenchbook.tax.rates;

import clenchbook.tax.page.Sentence;
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
  public static List<Sentence> said(Collection<MissingRate> missing) {
    TreeMap<String, TreeSet<MissingRate>> byTable = new TreeMap<>();
    missing.forEach(
        rate -> byTable.computeIfAbsent(rate.table(), unused -> new TreeSet<>()).add(rate));
    return byTable.values().stream().map(MissingRate::sentence).toList();
  }

  /** The same in English. */
  public static List<String> sentences(Collection<MissingRate> missing) {
    return said(missing).stream().map(Sentence::inEnglish).toList();
  }

  private static Sentence sentence(TreeSet<MissingRate> ofTable) {
    String table = ofTable.first().table();
    String days = join(ofTable.stream().map(rate -> rate.day().toString()));
    String codes = join(ofTable.stream().map(MissingRate::code).filter(code -> !code.equals(ALL)));
    return codes.isEmpty()
        ? Sentence.of(
            "the table rates/{0}.csv has no rows for {1}: no such figure is given; add them, with"
                + " their source, to a rates folder beside the workbook",
            table, days)
        : Sentence.of(
            "the table rates/{0}.csv has no rows for {1} ({2}): no such figure is given; add them,"
                + " with their source, to a rates folder beside the workbook",
            table, days, codes);
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

package clenchbook.tax.rates;

import clenchbook.texts.Message;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
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
  public static List<Message> said(Collection<MissingRate> missing) {
    TreeMap<String, TreeSet<MissingRate>> byTable = new TreeMap<>();
    missing.forEach(
        rate -> byTable.computeIfAbsent(rate.table(), unused -> new TreeSet<>()).add(rate));
    return byTable.values().stream().map(MissingRate::sentence).toList();
  }

  private static Message sentence(TreeSet<MissingRate> ofTable) {
    String table = ofTable.first().table();
    List<LocalDate> days = each(ofTable.stream().map(MissingRate::day));
    List<String> codes =
        each(ofTable.stream().map(MissingRate::code).filter(code -> !code.equals(ALL)));
    return codes.isEmpty()
        ? Message.of("tax.missing.table", table, days)
        : Message.of("tax.missing.codes", table, days, codes);
  }

  private static <T> List<T> each(Stream<T> things) {
    return things.distinct().sorted().toList();
  }

  @Override
  public int compareTo(MissingRate other) {
    int byTable = table.compareTo(other.table);
    int byCode = byTable != 0 ? byTable : code.compareTo(other.code);
    return byCode != 0 ? byCode : day.compareTo(other.day);
  }
}

package clenchbook.rates;

import java.time.LocalDate;

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

  /** The sentence to print: the table's file, what it lacks, and what to do. */
  public String sentence() {
    return "the table rates/"
        + table
        + ".csv has no row '"
        + code
        + "' for "
        + day
        + ": no figure is given; add a row to a rates folder beside the workbook, with its source";
  }

  @Override
  public int compareTo(MissingRate other) {
    int byTable = table.compareTo(other.table);
    int byCode = byTable != 0 ? byTable : code.compareTo(other.code);
    return byCode != 0 ? byCode : day.compareTo(other.day);
  }
}

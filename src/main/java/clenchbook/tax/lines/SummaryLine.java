package clenchbook.tax.lines;

import clenchbook.tax.page.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One line of the summary, with the rows that add to it to the cent.
 *
 * @param head its number, name and source
 * @param amount the sum of its items
 * @param basis what it rests on
 * @param items the rows behind it; for a total, the lines behind it
 * @param kind what it is
 */
public record SummaryLine(
    LineHead head, BigDecimal amount, Wording basis, List<LineItem> items, Kind kind) {

  /** What a line is. */
  public enum Kind {
    /** Made of rows, but no cost: income, stock bought. */
    ROWS,
    /** Money out that counts. */
    COST,
    /** Made from other lines. */
    TOTAL,
    /** Shown beside the others and part of no total. */
    BESIDE,
    /** Figured from the others by a rate, for orientation; part of no total. */
    ESTIMATE,
    /** Part of no total, and printed in a table of its own. */
    TABLED
  }

  /** Refuses an amount that its rows do not add to. */
  public SummaryLine {
    items = items.stream().sorted(LineItem.BY_DATE).toList();
    if (LineItem.sum(items).compareTo(amount) != 0) {
      throw new IllegalArgumentException(head + " is not the sum of its rows: " + amount);
    }
  }

  /** The first of some lines that stands under a number or word; empty where none does. */
  public static Optional<SummaryLine> find(List<SummaryLine> lines, String number) {
    return lines.stream().filter(line -> line.head().line().equals(number)).findFirst();
  }
}

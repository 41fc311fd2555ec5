package clenchbook.tax.lines;

import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/**
 * What one row of the book, or one figure above it, gives to a line of the summary.
 *
 * @param code the line's code in the regime's table
 * @param sheet the sheet of the row; {@code tax-summary} for a figure made from other lines
 * @param row the row as the spreadsheet numbers it; 0 for a figure made from other lines
 * @param date the day on which it counts
 * @param who owner, supplier or route
 * @param net what counts toward the line, in the minor unit
 * @param tax tax that is neither income nor cost
 * @param gross what was received or paid in all
 */
public record LineItem(
    String code,
    String sheet,
    int row,
    LocalDate date,
    String who,
    BigDecimal net,
    BigDecimal tax,
    BigDecimal gross) {
  public static final Comparator<LineItem> BY_DATE =
      Comparator.comparing(LineItem::date)
          .thenComparing(LineItem::sheet)
          .thenComparingInt(LineItem::row)
          .thenComparing(LineItem::code)
          .thenComparing(LineItem::who)
          .thenComparing(LineItem::net);

  /** What a bill's line gives to a line of the summary. */
  public static LineItem of(String code, Billed bill, BilledLine line) {
    return new LineItem(
        code,
        line.sheet(),
        line.row(),
        bill.date(),
        bill.owner(),
        line.net(),
        line.tax(),
        line.net().add(line.tax()));
  }

  /** The same row on another line. */
  public LineItem on(String otherCode) {
    return new LineItem(otherCode, sheet, row, date, who, net, tax, gross);
  }

  /** The same row with another part that counts, in the minor unit. */
  public LineItem with(BigDecimal counted) {
    return new LineItem(code, sheet, row, date, who, counted, tax, gross);
  }

  /** The same row with its tax as part of what counts, because it does not come back. */
  public LineItem withTaxIn() {
    BigDecimal all = net.add(tax);
    return new LineItem(code, sheet, row, date, who, all, tax.subtract(tax), gross);
  }

  /** The same row counted on another day. */
  public LineItem onDay(LocalDate other) {
    return new LineItem(code, sheet, row, other, who, net, tax, gross);
  }

  /** The sum of the parts that count, exact. */
  public static BigDecimal sum(List<LineItem> items) {
    return items.stream().map(LineItem::net).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  public static List<LineItem> of(String code, List<LineItem> items) {
    return items.stream().filter(item -> item.code().equals(code)).sorted(BY_DATE).toList();
  }

  public static List<LineItem> within(Period period, List<LineItem> items) {
    return items.stream().filter(item -> period.holds(item.date())).sorted(BY_DATE).toList();
  }
}

package clenchbook.tax.sales;

import clenchbook.book.TaxKind;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Taxable turnover without tax by the month in which the work was done. Work without a tax code is
 * taken to be taxable: before registration there is no code to write.
 *
 * @param months the turnover of each month that has any
 */
public record Turnover(TreeMap<YearMonth, BigDecimal> months) {

  /**
   * The turnover of a book.
   *
   * @param billed everything billed, of any date
   * @param kinds the kind of each tax code of the book
   */
  public static Turnover of(List<Billed> billed, Map<String, TaxKind> kinds) {
    TreeMap<YearMonth, BigDecimal> months = new TreeMap<>();
    billed.stream()
        .flatMap(bill -> bill.lines().stream())
        .filter(line -> isTaxable(line, kinds))
        .forEach(line -> months.merge(YearMonth.from(line.day()), line.net(), BigDecimal::add));
    return new Turnover(months);
  }

  private static boolean isTaxable(BilledLine line, Map<String, TaxKind> kinds) {
    TaxKind kind = kinds.getOrDefault(line.taxCode(), TaxKind.STANDARD);
    return kind != TaxKind.EXEMPT && kind != TaxKind.OUTSIDE_SCOPE;
  }

  /** The months from one to another, both included, together. */
  public BigDecimal between(YearMonth first, YearMonth last) {
    return first.isAfter(last)
        ? BigDecimal.ZERO
        : months.subMap(first, true, last, true).values().stream()
            .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** The last month of a period that has turnover; the period's first month where none has. */
  YearMonth lastIn(Period period) {
    LocalDate end = period.last();
    YearMonth whole = YearMonth.from(end);
    YearMonth last = end.equals(whole.atEndOfMonth()) ? whole : whole.minusMonths(1);
    YearMonth first = YearMonth.from(period.first());
    YearMonth found = months.floorKey(last);
    return found == null || found.isBefore(first) ? first : found;
  }
}

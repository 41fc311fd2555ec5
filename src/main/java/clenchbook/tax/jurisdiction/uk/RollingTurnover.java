package clenchbook.tax.jurisdiction.uk;

import clenchbook.book.TaxKind;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.tax.rates.RateLookup;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Taxable turnover of the twelve months that end with a month, by the day the work was done, beside
 * the registration threshold in force at that month's end.
 *
 * @param month the month
 * @param turnover net taxable turnover of the twelve months
 * @param threshold the threshold
 * @param complete whether the book holds all twelve months
 */
record RollingTurnover(
    YearMonth month, BigDecimal turnover, BigDecimal threshold, boolean complete) {
  private static final int MONTHS = 12;

  /**
   * One row for each month that ends within {@code year}; months without a threshold are left out
   * and remembered.
   */
  static List<RollingTurnover> of(
      Period year, List<Billed> billed, Map<String, TaxKind> kinds, RateLookup rates) {
    List<RollingTurnover> rows = new ArrayList<>();
    LocalDate earliest =
        billed.stream()
            .flatMap(bill -> bill.lines().stream())
            .map(BilledLine::day)
            .min(LocalDate::compareTo)
            .orElse(year.first());
    for (YearMonth month = YearMonth.from(year.first());
        !month.atEndOfMonth().isAfter(year.last());
        month = month.plusMonths(1)) {
      add(month, earliest, billed, kinds, rates, rows);
    }
    return List.copyOf(rows);
  }

  private static void add(
      YearMonth month,
      LocalDate earliest,
      List<Billed> billed,
      Map<String, TaxKind> kinds,
      RateLookup rates,
      List<RollingTurnover> rows) {
    rates
        .find("uk/turnover", "limit", month.atEndOfMonth())
        .map(limit -> row(month, MONTHS, limit.amount(), earliest, billed, kinds))
        .ifPresent(rows::add);
  }

  private static RollingTurnover row(
      YearMonth month,
      int months,
      BigDecimal threshold,
      LocalDate earliest,
      List<Billed> billed,
      Map<String, TaxKind> kinds) {
    LocalDate first = month.minusMonths(months - 1L).atDay(1);
    Period period = new Period(first, month.atEndOfMonth());
    BigDecimal turnover =
        billed.stream()
            .flatMap(bill -> bill.lines().stream())
            .filter(
                line ->
                    period.holds(line.day())
                        && isTaxable(kinds.getOrDefault(line.taxCode(), TaxKind.STANDARD)))
            .map(BilledLine::net)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    return new RollingTurnover(
        month, turnover, threshold, !earliest.withDayOfMonth(1).isAfter(first));
  }

  /**
   * Work without a tax code is taken to be taxable: before registration there is no code to write.
   */
  private static boolean isTaxable(TaxKind kind) {
    return kind != TaxKind.EXEMPT && kind != TaxKind.OUTSIDE_SCOPE;
  }

  /** Whether the threshold was passed. */
  boolean isOver() {
    return turnover.compareTo(threshold) > 0;
  }
}

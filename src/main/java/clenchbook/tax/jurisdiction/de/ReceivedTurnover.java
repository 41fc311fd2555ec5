package clenchbook.tax.jurisdiction.de;

import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.Income;
import clenchbook.tax.income.IncomeLines;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.sales.Turnover;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.TreeMap;

/** Turnover as received, without tax, by month: the year of the summary and the one before. */
final class ReceivedTurnover {
  private ReceivedTurnover() {}

  static Turnover of(YearFigures figures, IncomeLines onto, RateLookup rates) {
    LocalDate last = figures.input().taxYear().last();
    Period days = new Period(figures.input().taxYear().first().minusYears(1), last);
    Income income =
        Income.of(
            figures.input(),
            figures.billed(),
            days,
            figures.basis(),
            new LineScheme(DeJurisdiction.REGIME, last, rates),
            onto);
    TreeMap<YearMonth, BigDecimal> months = new TreeMap<>();
    income
        .items()
        .forEach(item -> months.merge(YearMonth.from(item.date()), item.net(), BigDecimal::add));
    return new Turnover(months);
  }
}

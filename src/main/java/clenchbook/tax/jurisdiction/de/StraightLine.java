package clenchbook.tax.jurisdiction.de;

import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * Straight-line depreciation by the month (Einkommensteuergesetz § 7 Abs. 1): the month of the
 * purchase counts, that of the sale does not.
 *
 * @param basis what is spread
 * @param months over how many months, at least one
 * @param bought the day bought
 * @param sold the day sold; empty while it is held
 */
record StraightLine(BigDecimal basis, int months, LocalDate bought, Optional<LocalDate> sold) {

  /** What was spread up to the end of a day's month, rounded half up; never more than the basis. */
  BigDecimal upTo(LocalDate day, MinorUnit unit) {
    YearMonth asked = YearMonth.from(day);
    YearMonth last =
        sold.map(YearMonth::from)
            .map(month -> month.minusMonths(1))
            .filter(end -> end.isBefore(asked))
            .orElse(asked);
    long count = YearMonth.from(bought).until(last, ChronoUnit.MONTHS) + 1;
    long counted = Math.max(0, Math.min(count, months));
    return unit.round(
        basis
            .multiply(BigDecimal.valueOf(counted))
            .divide(BigDecimal.valueOf(months), MathContext.DECIMAL128));
  }
}

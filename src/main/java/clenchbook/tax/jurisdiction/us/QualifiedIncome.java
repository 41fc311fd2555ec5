package clenchbook.tax.jurisdiction.us;

import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * An estimate of the deduction for qualified business income: a share of the net profit less the
 * deductible part of self-employment tax, with the minimum of later years. The limit by taxable
 * income and capital gains needs the whole return and is not in it.
 *
 * @param income the qualified business income it rests on
 * @param deduction the estimate, rounded half up
 * @param source where the share, and the minimum where it counts, come from
 */
record QualifiedIncome(BigDecimal income, BigDecimal deduction, String source) {
  private static final String TABLE = "us/qualified-business-income";

  /** The estimate; empty where the share of the year is missing, which is remembered. */
  static Optional<QualifiedIncome> of(
      BigDecimal netProfit,
      BigDecimal halfOfTax,
      LocalDate yearEnd,
      RateLookup rates,
      MinorUnit unit) {
    BigDecimal income = netProfit.subtract(halfOfTax).max(unit.zero());
    return rates
        .find(TABLE, "share", yearEnd)
        .map(share -> of(income, share, minimum(income, yearEnd, rates), unit));
  }

  private static QualifiedIncome of(
      BigDecimal income, Rate share, Optional<Rate> minimum, MinorUnit unit) {
    BigDecimal part = unit.round(income.multiply(share.factor()));
    boolean raised = minimum.filter(rate -> part.compareTo(rate.amount()) < 0).isPresent();
    return raised
        ? new QualifiedIncome(income, unit.round(minimum.get().amount()), minimum.get().citation())
        : new QualifiedIncome(income, part, share.citation());
  }

  private static Optional<Rate> minimum(BigDecimal income, LocalDate yearEnd, RateLookup rates) {
    return rates
        .ask(TABLE, "minimum from", yearEnd)
        .filter(from -> income.compareTo(from.amount()) >= 0)
        .flatMap(from -> rates.ask(TABLE, "minimum", yearEnd));
  }
}

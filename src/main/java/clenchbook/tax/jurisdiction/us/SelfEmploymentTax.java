package clenchbook.tax.jurisdiction.us;

import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * An estimate of self-employment tax from the year's net profit alone, as Schedule SE figures it:
 * no wages, no church income, no farm. Each line is rounded half up to the cent, so that line 12 is
 * the sum of the lines above it.
 *
 * @param netEarnings net profit times the net earnings share, rounded
 * @param socialSecurity its rate on net earnings up to the wage base
 * @param medicare its rate on all net earnings
 * @param tax the two together; nothing where net earnings, unrounded, stay below the threshold
 * @param deductible the part that is deducted from income
 */
record SelfEmploymentTax(
    BigDecimal netEarnings,
    BigDecimal socialSecurity,
    BigDecimal medicare,
    BigDecimal tax,
    BigDecimal deductible) {
  private static final String TABLE = "us/self-employment";

  /**
   * The estimate for a net profit; empty where a rate of the year is missing, which is remembered.
   */
  static Optional<SelfEmploymentTax> of(
      BigDecimal netProfit, LocalDate yearEnd, RateLookup rates, MinorUnit unit) {
    Optional<Rate> share = rates.find(TABLE, "net earnings share", yearEnd);
    Optional<Rate> threshold = rates.find(TABLE, "threshold", yearEnd);
    Optional<Rate> base = rates.find(TABLE, "wage base", yearEnd);
    Optional<Rate> social = rates.find(TABLE, "social security", yearEnd);
    Optional<Rate> medicare = rates.find(TABLE, "medicare", yearEnd);
    Optional<Rate> half = rates.find(TABLE, "deductible part", yearEnd);
    if (share.isEmpty() || threshold.isEmpty() || base.isEmpty()) {
      return Optional.empty();
    }
    if (social.isEmpty() || medicare.isEmpty() || half.isEmpty()) {
      return Optional.empty();
    }
    BigDecimal earnings = netProfit.max(BigDecimal.ZERO).multiply(share.get().factor());
    if (earnings.compareTo(threshold.get().amount()) < 0) {
      return Optional.of(nothing(unit.round(earnings), unit));
    }
    BigDecimal capped =
        unit.round(earnings.min(base.get().amount()).multiply(social.get().factor()));
    BigDecimal whole = unit.round(earnings.multiply(medicare.get().factor()));
    BigDecimal tax = capped.add(whole);
    BigDecimal deductible = unit.round(tax.multiply(half.get().factor()));
    return Optional.of(new SelfEmploymentTax(unit.round(earnings), capped, whole, tax, deductible));
  }

  private static SelfEmploymentTax nothing(BigDecimal earnings, MinorUnit unit) {
    return new SelfEmploymentTax(earnings, unit.zero(), unit.zero(), unit.zero(), unit.zero());
  }
}

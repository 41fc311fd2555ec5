package clenchbook.tax.jurisdiction.uk;

import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * An estimate of Class 4 National Insurance from the year's profit alone: the main rate between the
 * two limits, the further rate above, each rounded half up.
 *
 * @param amount the estimate
 * @param rule the rule in words
 * @param source where the rates come from
 */
record NationalInsurance(BigDecimal amount, String rule, String source) {
  private static final String TABLE = "uk/national-insurance";

  /** The estimate; empty for a year without rates, which is no fault before the first of them. */
  static Optional<NationalInsurance> of(
      BigDecimal profit, LocalDate yearEnd, RateLookup rates, MinorUnit unit) {
    if (rates.beginsAfter(TABLE, yearEnd)) {
      return Optional.empty();
    }
    Optional<Rate> lower = rates.find(TABLE, "class 4 lower", yearEnd);
    Optional<Rate> upper = rates.find(TABLE, "class 4 upper", yearEnd);
    Optional<Rate> main = rates.find(TABLE, "class 4 main", yearEnd);
    Optional<Rate> further = rates.find(TABLE, "class 4 further", yearEnd);
    if (lower.isEmpty() || upper.isEmpty() || main.isEmpty() || further.isEmpty()) {
      return Optional.empty();
    }
    BigDecimal from = lower.get().amount();
    BigDecimal to = upper.get().amount();
    BigDecimal between = profit.min(to).subtract(from).max(BigDecimal.ZERO);
    BigDecimal above = profit.subtract(to).max(BigDecimal.ZERO);
    BigDecimal amount =
        unit.round(between.multiply(main.get().factor()))
            .add(unit.round(above.multiply(further.get().factor())));
    String rule =
        main.get().value()
            + " % of profit from "
            + lower.get().value()
            + " to "
            + upper.get().value()
            + ", "
            + further.get().value()
            + " % above";
    return Optional.of(new NationalInsurance(amount, rule, main.get().citation()));
  }
}

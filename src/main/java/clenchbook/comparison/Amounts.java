package clenchbook.comparison;

import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.Measure;

/** Amounts of money and minutes as people read them. */
final class Amounts {
  private static final int DECIMALS_OF_MINUTES = 2;

  private final String currency;
  private final int digits;

  Amounts(CompareRates rates) {
    this.currency = rates.currency();
    this.digits = rates.minor().digits();
  }

  /** An amount with its currency. */
  String money(double amount) {
    return Double.isInfinite(amount)
        ? Numbers.NEVER
        : currency + " " + Numbers.people(amount, digits);
  }

  /** A figure of a measure with its unit. */
  String of(Measure measure, double value) {
    return measure.unit() == Measure.Unit.MONEY
        ? money(value)
        : Numbers.people(value, DECIMALS_OF_MINUTES) + " minutes";
  }

  /** A difference in words, such as {@code 2.10 minutes less}. */
  String signed(Measure measure, double value) {
    return of(measure, Math.abs(value)) + (value < 0 ? " less" : " more");
  }

  /** How many decimals a measure is printed with. */
  int decimals(Measure measure) {
    return measure.unit() == Measure.Unit.MONEY ? digits : DECIMALS_OF_MINUTES;
  }
}

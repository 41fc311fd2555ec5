package clenchbook.comparison;

import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.Measure;
import clenchbook.reports.blocks.FigureText;
import java.math.BigDecimal;

/** Amounts of money and minutes as people read them. */
final class Amounts {
  private static final int DECIMALS_OF_MINUTES = 2;

  private final FigureText text;
  private final int digits;

  Amounts(CompareRates rates) {
    this.text = rates.text();
    this.digits = rates.minor().digits();
  }

  /** An amount that stands alone, with the currency's sign. */
  String money(double amount) {
    return Double.isInfinite(amount) ? never() : text.about(Numbers.filed(amount));
  }

  /** A number with so many decimals. */
  String number(double value, int decimals) {
    return Double.isInfinite(value) ? never() : text.number(Numbers.filed(value), decimals);
  }

  private String never() {
    return text.say("comparison.never");
  }

  /** A whole number. */
  String count(long count) {
    return text.count(count);
  }

  /** A share, 0.2 for 20 %. */
  String percent(double share) {
    return text.percent(Numbers.filed(share).multiply(BigDecimal.valueOf(100)), 1);
  }

  /** A measure's name, with the currency's sign where it is money. */
  String titled(Measure measure) {
    String name = text.say(measure.told());
    return measure.unit() == Measure.Unit.MONEY ? name + ", " + text.currencySign() : name;
  }

  /** A figure of a measure with its unit. */
  String of(Measure measure, double value) {
    return measure.unit() == Measure.Unit.MONEY
        ? money(value)
        : text.say("comparison.minutes", number(value, DECIMALS_OF_MINUTES));
  }

  /** A difference in words, such as {@code 2.10 minutes less}. */
  String signed(Measure measure, double value) {
    String size = of(measure, Math.abs(value));
    return value < 0 ? text.say("comparison.less", size) : text.say("comparison.more", size);
  }

  /** How many decimals a measure is printed with. */
  int decimals(Measure measure) {
    return measure.unit() == Measure.Unit.MONEY ? digits : DECIMALS_OF_MINUTES;
  }
}

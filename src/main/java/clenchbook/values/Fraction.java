package clenchbook.values;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads shop numbers: {@code 3/4}, {@code 1 1/8}, {@code 0.75}, {@code 0,75}. */
public final class Fraction {
  private static final Pattern FORM =
      Pattern.compile("\\s*(?:(\\d+)\\s+)?(\\d+)\\s*/\\s*(\\d+)\\s*|\\s*(\\d+(?:[.,]\\d+)?)\\s*");

  private Fraction() {}

  /**
   * Reads one shop number.
   *
   * @param text the text; blank or unreadable gives empty
   * @return its value to 34 figures
   */
  public static Optional<BigDecimal> parse(String text) {
    Matcher matcher = FORM.matcher(text);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    if (matcher.group(4) != null) {
      return Optional.of(new BigDecimal(matcher.group(4).replace(',', '.')));
    }
    BigDecimal denominator = new BigDecimal(matcher.group(3));
    if (denominator.signum() == 0) {
      return Optional.empty();
    }
    BigDecimal whole =
        matcher.group(1) == null ? BigDecimal.ZERO : new BigDecimal(matcher.group(1));
    return Optional.of(
        whole.add(new BigDecimal(matcher.group(2)).divide(denominator, MathContext.DECIMAL128)));
  }
}

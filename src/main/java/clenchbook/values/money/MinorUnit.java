package clenchbook.values.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

/**
 * The smallest step of a currency, as the number of decimals of its minor unit (ISO 4217).
 *
 * @param digits decimals of an amount: 2 for EUR, 0 for JPY, 3 for BHD; never negative
 */
public record MinorUnit(int digits) {
  /**
   * Decimals beyond the minor unit that are still told apart: far coarser than 34 figures leave.
   */
  private static final int GUARD = 20;

  /** Refuses a currency without a minor unit, such as a unit of account. */
  public MinorUnit {
    if (digits < 0) {
      throw new IllegalArgumentException("no minor unit: " + digits);
    }
  }

  /**
   * The minor unit of a currency.
   *
   * @param currencyCode an ISO 4217 code; an unknown one throws {@link IllegalArgumentException}
   * @return its minor unit, from the JDK's copy of ISO 4217
   */
  public static MinorUnit of(String currencyCode) {
    return new MinorUnit(Currency.getInstance(currencyCode).getDefaultFractionDigits());
  }

  /**
   * Rounds half up, away from zero, to the minor unit. An amount that a division left a hair below
   * or above the half (beyond the twentieth decimal) counts as the half it stands for.
   *
   * @param exact any amount, not null
   * @return the amount with exactly {@link #digits()} decimals
   */
  public BigDecimal round(BigDecimal exact) {
    return exact
        .setScale(digits + GUARD, RoundingMode.HALF_UP)
        .setScale(digits, RoundingMode.HALF_UP);
  }

  /**
   * Nothing, with this currency's decimals.
   *
   * @return zero at the scale of the minor unit
   */
  public BigDecimal zero() {
    return BigDecimal.ZERO.setScale(digits);
  }
}

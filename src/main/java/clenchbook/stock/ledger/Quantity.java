package clenchbook.stock.ledger;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How quantities stand in figures and on pages. */
public final class Quantity {

  private static final int DECIMALS = 3;

  private Quantity() {}

  /** Gives a quantity with at most three decimals, half-up, none of them empty: {@code 12.5}. */
  public static String text(BigDecimal quantity) {
    return rounded(quantity).toPlainString();
  }

  /** Gives the quantity at most three decimals fine, half-up. */
  static BigDecimal rounded(BigDecimal quantity) {
    BigDecimal rounded = quantity.setScale(DECIMALS, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? BigDecimal.ZERO : plain(rounded.stripTrailingZeros());
  }

  /** Gives the next whole number up; for what is weighed or cut, the next tenth. */
  public static BigDecimal up(BigDecimal quantity, boolean wholePieces) {
    return quantity.setScale(wholePieces ? 0 : 1, RoundingMode.CEILING);
  }

  private static BigDecimal plain(BigDecimal stripped) {
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}

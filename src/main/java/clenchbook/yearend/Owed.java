package clenchbook.yearend;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What the register says owners owe, to tie the year's money to.
 *
 * @param openingDate the day from which the register keeps balances; empty without a register
 * @param openingBalances the opening balances taken up on that day
 * @param before owed on the evening before the period
 * @param after owed on the evening of its last day
 */
public record Owed(
    Optional<LocalDate> openingDate,
    BigDecimal openingBalances,
    BigDecimal before,
    BigDecimal after) {
  /** No register. */
  public static final Owed NONE =
      new Owed(Optional.empty(), BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);
}

package clenchbook.tax.journal;

import java.math.BigDecimal;

/**
 * One side of a journal entry.
 *
 * @param account the account's name
 * @param amount a debit above zero, a credit below
 */
public record Posting(String account, BigDecimal amount) {
  public static Posting debit(String account, BigDecimal amount) {
    return new Posting(account, amount);
  }

  public static Posting credit(String account, BigDecimal amount) {
    return new Posting(account, amount.negate());
  }
}

package clenchbook.matching.bank;

import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * One movement of a bank account. Texts are empty where the bank gives none.
 *
 * @param statement the place of its statement among those read, from 0
 * @param label its place in the file, such as {@code 14}, or {@code 14#3} for the third transaction
 *     of a batch
 * @param date the day it was booked
 * @param amount in the account's currency; money in is positive, money out negative
 * @param currency the ISO 4217 code; empty where the file names none
 * @param who the other side's name
 * @param account the other side's account, in full; never written to a file
 * @param text what the payer wrote
 * @param reference the structured creditor reference
 * @param endToEnd the payer's own reference
 * @param bankReference the bank's reference of this entry
 * @param standing what the bank says of it
 * @param batch the bank's reference and the sum of the batch it was taken from; empty for none
 * @param note why a batch could not be taken apart; {@link Message#NONE} for none
 */
public record BankEntry(
    int statement,
    String label,
    LocalDate date,
    BigDecimal amount,
    String currency,
    String who,
    String account,
    String text,
    String reference,
    String endToEnd,
    String bankReference,
    Standing standing,
    String batch,
    Message note) {

  /** What a bank says of an entry. */
  public enum Standing {
    /** Booked. */
    BOOKED,
    /** Announced, not booked. */
    PENDING,
    /** The bank's own charge or interest. */
    CHARGE,
    /** An earlier movement that came back, or was taken back. */
    RETURNED
  }

  /**
   * How a batch is known wherever it stands.
   *
   * @param reference the bank's reference of it
   * @param sum what it adds to
   * @return equal for the same batch
   */
  public static String batch(String reference, BigDecimal sum) {
    return reference + "|" + sum.stripTrailingZeros().toPlainString();
  }

  /**
   * Whether money came in.
   *
   * @return false for money out and for nothing
   */
  public boolean moneyIn() {
    return amount.signum() > 0;
  }
}

package clenchbook.matching.known;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * An invoice or credit note of the register that is not void.
 *
 * @param number its number
 * @param owner who is billed
 * @param date its date
 * @param gross what it charges; negative for a credit note
 * @param open what of it is still open, by the payments entered; nothing for a credit note
 */
public record KnownDocument(
    String number, String owner, LocalDate date, BigDecimal gross, BigDecimal open) {

  /**
   * Whether money is still expected for it.
   *
   * @return false once it is settled, and for a credit note
   */
  public boolean isOpen() {
    return open.signum() > 0;
  }

  /**
   * Whether it takes back.
   *
   * @return true for a credit note
   */
  public boolean creditNote() {
    return gross.signum() < 0;
  }

  /** By the number, which tells documents apart; so that looking one up costs little. */
  @Override
  public int hashCode() {
    return number.hashCode();
  }
}

package clenchbook.matching.bank;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One statement of a bank file, without its entries.
 *
 * @param file the file's name, account numbers masked
 * @param place its place in the file, from 1
 * @param number the bank's number of the statement; empty for none
 * @param account the farrier's own account, in full; empty for unknown; never written to a file
 * @param currency the ISO 4217 code; empty for unknown
 * @param from the first day it covers, inclusive
 * @param to the last day it covers, inclusive
 * @param opening the booked balance before its first entry
 * @param closing the booked balance after its last entry
 * @param dated whether the bank states its period; else it is only that of its entries
 * @param whole false for one page of several, a notification, or a report within the day: its
 *     balances and period bind nothing
 */
public record BankStatement(
    String file,
    int place,
    String number,
    String account,
    String currency,
    Optional<LocalDate> from,
    Optional<LocalDate> to,
    Optional<BigDecimal> opening,
    Optional<BigDecimal> closing,
    boolean dated,
    boolean whole) {
  private static final int TAIL = 8;

  /**
   * How files and messages name it.
   *
   * @return the file's name, with its place behind it from the second on
   */
  public String name() {
    return place > 1 ? file + " (" + place + ")" : file;
  }

  /**
   * Whether another statement begins where this one ends, by day and balance.
   *
   * @param later the other one
   * @return false too where either names no balance
   */
  public boolean isFollowedBy(BankStatement later) {
    boolean balances =
        closing.isPresent()
            && later.opening.isPresent()
            && closing.get().compareTo(later.opening.get()) == 0;
    LocalDate end = to.orElse(LocalDate.MAX);
    LocalDate begin = later.from.orElse(LocalDate.MIN);
    boolean same = from.equals(later.from) && to.equals(later.to);
    return balances && !begin.isBefore(end) && !(same && isStill());
  }

  private boolean isStill() {
    return opening.isPresent()
        && closing.isPresent()
        && opening.get().compareTo(closing.get()) == 0;
  }

  /**
   * Whether two statements may be of one account: their accounts are equal, unknown, or end with
   * the same eight digits, as an IBAN and a national number do.
   *
   * @param other another statement
   * @return true where nothing tells them apart
   */
  public boolean sameAccount(BankStatement other) {
    if (account.isEmpty() || other.account.isEmpty() || account.equalsIgnoreCase(other.account)) {
      return true;
    }
    String one = account.replaceAll("[^0-9]", "");
    String two = other.account.replaceAll("[^0-9]", "");
    return one.length() >= TAIL
        && two.length() >= TAIL
        && one.substring(one.length() - TAIL).equals(two.substring(two.length() - TAIL));
  }
}

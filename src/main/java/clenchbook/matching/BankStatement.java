package clenchbook.matching;

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

  /**
   * How files and messages name it.
   *
   * @return the file's name, with its place behind it from the second on
   */
  public String name() {
    return place > 1 ? file + " (" + place + ")" : file;
  }
}

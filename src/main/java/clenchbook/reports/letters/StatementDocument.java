package clenchbook.reports.letters;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A statement of an owner's account, ready to print.
 *
 * @param head farrier, owner and date; its number is empty
 * @param from the first day it covers
 * @param broughtForward the balance before that day
 * @param entries the movements in order
 * @param balance the balance at its date; negative is in the owner's favour
 * @param ageing the balance by days past due
 * @param asked the same as at the day up to which payments were entered: what a reminder speaks of
 * @param enteredUpTo that day; empty where no payment was entered
 * @param lateFeePercentPerMonth the fee that the farrier may ask for late payment; empty for none
 * @param pay how to pay
 */
public record StatementDocument(
    DocumentHead head,
    LocalDate from,
    BigDecimal broughtForward,
    List<StatementEntry> entries,
    BigDecimal balance,
    Ageing ageing,
    Ageing asked,
    Optional<LocalDate> enteredUpTo,
    Optional<BigDecimal> lateFeePercentPerMonth,
    HowToPay pay) {
  /** Copies its list. */
  public StatementDocument {
    entries = List.copyOf(entries);
  }
}

package clenchbook.reports.month;

import clenchbook.billing.accounts.Account;
import java.util.List;

/** Who gets a statement. */
public final class Statements {
  private Statements() {}

  /**
   * The accounts that need one: those with a balance from before the month, or a movement on an
   * older document in it.
   *
   * @param accounts all accounts
   * @return in order
   */
  public static List<Account> due(List<Account> accounts) {
    return accounts.stream()
        .filter(account -> account.broughtForward().signum() != 0 || account.olderMoved())
        .toList();
  }
}

package clenchbook.tax.billed;

import clenchbook.billing.Accounts;
import clenchbook.billing.BillingDecision;
import clenchbook.billing.accounts.Account;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Setting;
import clenchbook.jobs.Jobs;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the register says owners owe at both ends of a period, to tie the period's money to.
 *
 * @param openingDate the day from which the register keeps balances; payments before it do not
 *     count there
 * @param before owed on the evening before the first day, opening balances included
 * @param after owed on the evening of the last day
 */
public record OwnerDebts(LocalDate openingDate, BigDecimal before, BigDecimal after) {

  /** Empty without a register. */
  public static Optional<OwnerDebts> of(Jobs jobs, List<BilledDocument> register, Period period) {
    return BilledBook.begins(register)
        .map(begins -> jobs.index().book().settings().findDate(Setting.OPENING_DATE).orElse(begins))
        .map(opening -> of(jobs, register, period, opening));
  }

  private static OwnerDebts of(
      Jobs jobs, List<BilledDocument> register, Period period, LocalDate opening) {
    BillingDecision state =
        new BillingDecision(List.of(), register, List.of(), List.of(), List.of(), opening);
    List<Account> accounts = Accounts.of(jobs, state, period.first(), period.last());
    return new OwnerDebts(
        opening,
        sum(accounts.stream().map(Account::broughtForward).toList()),
        sum(accounts.stream().map(Account::balance).toList()));
  }

  private static BigDecimal sum(List<BigDecimal> amounts) {
    return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}

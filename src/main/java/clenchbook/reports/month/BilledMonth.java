package clenchbook.reports.month;

import clenchbook.billing.Accounts;
import clenchbook.billing.BillingDecision;
import clenchbook.billing.MonthBilling;
import clenchbook.billing.accounts.Account;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.numbering.PaymentReferences;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.schedule.DueFindings;
import clenchbook.schedule.DueList;
import java.time.YearMonth;
import java.util.List;

/**
 * What a month's letters need: the documents, the accounts, and when the horses are next due.
 *
 * @param month the month
 * @param jobs the book's jobs
 * @param billing the documents after the run
 * @param accounts every owner's account as at the month's last day
 * @param due the due list
 */
public record BilledMonth(
    YearMonth month, Jobs jobs, BillingDecision billing, List<Account> accounts, DueFindings due) {

  /** Copies its list. */
  public BilledMonth {
    accounts = List.copyOf(accounts);
  }

  /**
   * Bills a month.
   *
   * @param jobs the book's jobs
   * @param register all documents that the register holds
   * @param options the month and what was asked
   * @return the month, billed
   */
  public static BilledMonth of(Jobs jobs, List<BilledDocument> register, BillingOptions options) {
    return of(jobs, MonthBilling.decide(jobs, register, options), options.month());
  }

  /**
   * A month that has been decided.
   *
   * @param jobs the book's jobs
   * @param decided what was decided
   * @param month the month
   * @return the month, billed
   */
  public static BilledMonth of(Jobs jobs, BillingDecision decided, YearMonth month) {
    BillingDecision billing = decided.naming(jobs.index()::ownerName);
    return new BilledMonth(
        month,
        jobs,
        billing,
        Accounts.of(jobs, billing, month.atDay(1), month.atEndOfMonth()),
        DueList.of(jobs, month));
  }

  /**
   * The uncancelled jobs of the month.
   *
   * @return in order
   */
  public List<Job> monthJobs() {
    return jobs.between(month.atDay(1), month.atEndOfMonth()).stream()
        .filter(job -> !job.cancelled())
        .toList();
  }

  /**
   * What transfers for the documents shall say.
   *
   * @return the references of all documents after the run
   */
  public PaymentReferences references() {
    return PaymentReferences.of(
        jobs.index().book().settings(),
        billing.documents().stream().map(BilledDocument::number).toList());
  }
}

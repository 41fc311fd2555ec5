package clenchbook.reference;

import clenchbook.billing.Accounts;
import clenchbook.billing.BillingDecision;
import clenchbook.billing.MonthBilling;
import clenchbook.billing.accounts.Account;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.costing.JobCost;
import clenchbook.costing.JobCosts;
import clenchbook.jobs.JobResolver;
import clenchbook.jobs.Jobs;
import clenchbook.reading.BookReader;
import clenchbook.reading.ReadOptions;
import clenchbook.reading.ReadResult;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The program's own figures of a month with an empty register: read, resolve, cost, bill. */
record ProgramMonth(
    ReadResult read,
    Jobs jobs,
    List<JobCost> costs,
    List<BilledDocument> invoices,
    List<Account> accounts) {

  static ProgramMonth of(Path file, YearMonth month) throws IOException {
    ReadResult read = BookReader.read(file, ReadOptions.of(Locale.UK));
    Jobs jobs = JobResolver.resolve(read.book());
    LocalDate last = month.atEndOfMonth();
    JobCosts costs = JobCosts.of(jobs, last);
    BillingDecision decision =
        MonthBilling.decide(
            jobs, List.of(), new BillingOptions(month, false, Optional.empty(), false));
    return new ProgramMonth(
        read,
        jobs,
        costs.between(month.atDay(1), last),
        decision.month(),
        Accounts.of(jobs, decision, month.atDay(1), last));
  }
}

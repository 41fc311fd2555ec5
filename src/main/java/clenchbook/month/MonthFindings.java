package clenchbook.month;

import clenchbook.billing.Account;
import clenchbook.billing.Accounts;
import clenchbook.billing.BilledDocument;
import clenchbook.billing.BillingDecision;
import clenchbook.billing.BillingOptions;
import clenchbook.billing.MonthBilling;
import clenchbook.book.Book;
import clenchbook.book.Setting;
import clenchbook.comparison.ComparedJobs;
import clenchbook.comparison.Comparisons;
import clenchbook.costing.JobCost;
import clenchbook.costing.JobCosts;
import clenchbook.duelist.DueFindings;
import clenchbook.duelist.DueList;
import clenchbook.job.Job;
import clenchbook.job.Jobs;
import clenchbook.problem.Problem;
import clenchbook.report.FigureTable;
import clenchbook.report.Report;
import clenchbook.stock.Stock;
import clenchbook.stock.StockFindings;
import clenchbook.workload.ShapeDifference;
import clenchbook.workload.Workload;
import clenchbook.workload.WorkloadFindings;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/**
 * A whole month, decided: nothing is left to reckon when it is written.
 *
 * @param month the month
 * @param jobs the book's jobs
 * @param problems the whole book's problems, sorted
 * @param costs what each job cost
 * @param billing the documents after the run
 * @param accounts every owner's account as at the month's last day
 * @param margins what the month's jobs left
 * @param comparisons the questions over the twelve months that end with the month
 * @param workload the year to date
 * @param stock stock, orders and bar
 * @param due the due list
 */
public record MonthFindings(
    YearMonth month,
    Jobs jobs,
    List<Problem> problems,
    JobCosts costs,
    BillingDecision billing,
    List<Account> accounts,
    Margins margins,
    Comparisons comparisons,
    WorkloadFindings workload,
    StockFindings stock,
    DueFindings due) {

  /** Copies its lists. */
  public MonthFindings {
    problems = List.copyOf(problems);
    accounts = List.copyOf(accounts);
  }

  /**
   * Decides a month.
   *
   * @param jobs the book's jobs
   * @param problems all problems so far, in any order
   * @param register all documents that the register holds
   * @param options the month and what was asked
   * @return everything about the month
   */
  public static MonthFindings of(
      Jobs jobs, List<Problem> problems, List<BilledDocument> register, BillingOptions options) {
    Book book = jobs.index().book();
    YearMonth month = options.month();
    LocalDate first = month.atDay(1);
    LocalDate last = month.atEndOfMonth();
    JobCosts costs = JobCosts.of(jobs, last);
    BillingDecision billing = MonthBilling.decide(jobs, register, options);
    Comparisons comparisons =
        Comparisons.of(
            ComparedJobs.of(jobs, costs),
            month.minusMonths(11).atDay(1),
            last,
            ComparedJobs.rates(book.settings()));
    DueFindings due = DueList.of(jobs, month);
    return new MonthFindings(
        month,
        jobs,
        BookFigures.sorted(book, problems),
        costs,
        billing,
        Accounts.of(jobs, billing, first, last),
        Margins.of(jobs.index(), costs, first, last, billedNet(billing)),
        comparisons,
        Workload.of(
            book,
            jobs.all(),
            Workload.yearStart(book.settings(), last),
            last,
            ShapeDifference.of(comparisons)),
        Stock.of(jobs, due, month),
        due);
  }

  private static BigDecimal billedNet(BillingDecision billing) {
    return billing.month().stream()
        .filter(BilledDocument::counts)
        .map(BilledDocument::net)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /**
   * Every table under {@code figures/}.
   *
   * @return in the order they are made
   */
  public List<FigureTable> tables() {
    List<JobCost> month = costs.between(this.month.atDay(1), this.month.atEndOfMonth());
    DocumentFigures documents = new DocumentFigures(billing.month(), accounts);
    List<FigureTable> tables = new ArrayList<>();
    tables.add(new JobFigures(jobs.index()).table(month));
    tables.add(documents.invoices());
    tables.add(documents.lines());
    tables.add(documents.tax());
    tables.add(DocumentFigures.balances(accounts));
    tables.add(CorrectionFigures.table(billing, EarlierDrafts.of(billing, this.month)));
    tables.add(margins.table());
    tables.add(margins.summary());
    tables.addAll(comparisons.tables());
    tables.add(workload.figures());
    tables.addAll(stock.tables());
    tables.addAll(due.tables());
    tables.add(BookFigures.control(jobs.index().book(), problems));
    return tables;
  }

  /**
   * The printed reports.
   *
   * @return margins, comparisons, workload, stock, horses by place
   */
  public List<Report> reports() {
    String business = jobs.index().book().settings().text(Setting.BUSINESS_NAME);
    return List.of(
        MarginsReport.of(margins, MonthWords.of(month)),
        comparisons.report(business),
        workload.report(),
        stock.report(),
        due.horseSheet());
  }

  /**
   * The same month with all problems.
   *
   * @param all sorted problems
   * @return the findings
   */
  public MonthFindings with(List<Problem> all) {
    return new MonthFindings(
        month, jobs, all, costs, billing, accounts, margins, comparisons, workload, stock, due);
  }

  /**
   * Where the book and the documents that are out no longer agree, in sentences.
   *
   * @return one each; empty when they agree
   */
  public List<String> differencesInWords() {
    return CorrectionFigures.sentences(billing, EarlierDrafts.of(billing, month));
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
}

package clenchbook.reports.month;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.accounts.Account;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.comparison.Comparisons;
import clenchbook.comparison.questions.ComparedJobs;
import clenchbook.costing.JobCost;
import clenchbook.costing.JobCosts;
import clenchbook.jobs.Jobs;
import clenchbook.matching.WaitingPayments;
import clenchbook.problem.Problem;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.Report;
import clenchbook.schedule.DueFindings;
import clenchbook.stock.Stock;
import clenchbook.stock.StockFindings;
import clenchbook.workload.Workload;
import clenchbook.workload.WorkloadFindings;
import clenchbook.workload.outlook.ShapeDifference;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * A whole month, decided: nothing is left to reckon when it is written.
 *
 * @param billed the month, billed
 * @param problems the whole book's problems, sorted
 * @param costs what each job cost
 * @param margins what the month's jobs left
 * @param comparisons the questions over the twelve months that end with the month
 * @param workload the year to date
 * @param stock stock, orders and bar
 * @param waiting rows of bank entries that wait to be pasted into Payments
 * @param reports the printed reports: what is here is printed, and linked on the month's page
 */
public record MonthFindings(
    BilledMonth billed,
    List<Problem> problems,
    JobCosts costs,
    Margins margins,
    Comparisons comparisons,
    WorkloadFindings workload,
    StockFindings stock,
    WaitingPayments waiting,
    List<Report> reports) {

  /** Copies its lists. */
  public MonthFindings {
    problems = List.copyOf(problems);
    reports = List.copyOf(reports);
  }

  /**
   * Decides a month.
   *
   * @param billed the month, billed
   * @param problems all problems, in any order
   * @param waiting rows of bank entries that wait to be pasted into Payments
   * @param yearStart the first day of the year in which the month ends
   * @param decided takes each printed report as soon as it stands, while others are still reckoned:
   *     horses by place, margins, comparisons, workload, stock
   * @return everything about the month
   */
  public static MonthFindings of(
      BilledMonth billed,
      List<Problem> problems,
      WaitingPayments waiting,
      LocalDate yearStart,
      Consumer<Report> decided) {
    Jobs jobs = billed.jobs();
    Settings settings = jobs.index().book().settings();
    LocalDate first = billed.month().atDay(1);
    LocalDate last = billed.month().atEndOfMonth();
    List<Report> reports = new ArrayList<>();
    Consumer<Report> report = reports::add;
    Consumer<Report> done = report.andThen(decided);
    done.accept(billed.due().horseSheet());
    JobCosts costs = JobCosts.of(jobs, last);
    Margins margins = Margins.of(jobs.index(), costs, first, last, billedNet(billed.billing()));
    done.accept(MarginsReport.of(margins, FigureText.of(settings).month(billed.month())));
    Comparisons comparisons =
        Comparisons.of(
            ComparedJobs.of(jobs, costs),
            billed.month().minusMonths(11).atDay(1),
            last,
            ComparedJobs.rates(settings));
    done.accept(comparisons.report(settings.text(Setting.BUSINESS_NAME)));
    WorkloadFindings workload =
        Workload.of(
            jobs.index().book(), jobs.all(), yearStart, last, ShapeDifference.of(comparisons));
    done.accept(workload.report());
    StockFindings stock = Stock.of(jobs, billed.due(), billed.month());
    done.accept(stock.report());
    return new MonthFindings(
        billed,
        BookFigures.sorted(jobs.index().book(), problems),
        costs,
        margins,
        comparisons,
        workload,
        stock,
        waiting,
        reports);
  }

  /**
   * The same month after its documents have moved on: nothing else is reckoned anew.
   *
   * @param now the month with its documents as they are now
   * @return everything about the month
   */
  public MonthFindings with(BilledMonth now) {
    return new MonthFindings(
        now, problems, costs, margins, comparisons, workload, stock, waiting, reports);
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
    List<JobCost> month = costs.between(month().atDay(1), month().atEndOfMonth());
    DocumentFigures documents = new DocumentFigures(billing().month(), accounts());
    List<FigureTable> tables = new ArrayList<>();
    tables.add(new JobFigures(jobs().index()).table(month));
    tables.add(documents.invoices());
    tables.add(documents.lines());
    tables.add(documents.tax());
    tables.add(DocumentFigures.balances(accounts()));
    tables.add(new OpenInvoices(this).table());
    tables.add(CorrectionFigures.table(billing(), EarlierDrafts.of(billing(), month())));
    tables.add(Collected.of(this).table(accounts()));
    tables.add(margins.table());
    tables.add(margins.summary());
    tables.addAll(comparisons.tables());
    tables.add(workload.figures());
    tables.addAll(stock.tables());
    tables.addAll(due().tables());
    tables.add(BookFigures.control(jobs().index().book(), problems));
    return tables;
  }

  /**
   * The month.
   *
   * @return its year and month
   */
  public YearMonth month() {
    return billed.month();
  }

  /**
   * The book's jobs.
   *
   * @return all of them
   */
  public Jobs jobs() {
    return billed.jobs();
  }

  /**
   * The documents.
   *
   * @return as they are after the run
   */
  public BillingDecision billing() {
    return billed.billing();
  }

  /**
   * The accounts.
   *
   * @return every owner's, as at the month's last day
   */
  public List<Account> accounts() {
    return billed.accounts();
  }

  /**
   * The due list.
   *
   * @return its findings
   */
  public DueFindings due() {
    return billed.due();
  }

  /**
   * Where the book and the documents that are out no longer agree, in sentences.
   *
   * @return one each; empty when they agree
   */
  public List<String> differencesInWords() {
    return CorrectionFigures.sentences(
        billing(),
        EarlierDrafts.of(billing(), month()),
        FigureText.of(jobs().index().book().settings()));
  }
}

package clenchbook.commands;

import clenchbook.book.Book;
import clenchbook.commands.opening.OpenBook;
import clenchbook.comparison.Comparisons;
import clenchbook.comparison.questions.ComparedJobs;
import clenchbook.costing.JobCosts;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.Report;
import clenchbook.reports.month.Margins;
import clenchbook.reports.month.MarginsReport;
import clenchbook.tax.YearEndFindings;
import clenchbook.tax.year.TaxYear;
import clenchbook.values.Period;
import clenchbook.workload.Workload;
import clenchbook.workload.WorkloadFindings;
import clenchbook.workload.outlook.ShapeDifference;
import java.util.List;

/**
 * The margins and the workload of a year.
 *
 * @param figures their tables
 * @param reports their reports
 */
record YearReports(List<FigureTable> figures, List<Report> reports) {

  static YearReports of(OpenBook open, YearEndFindings year, TaxYear taxYear) {
    Period period = year.period();
    JobCosts costs = JobCosts.of(open.jobs(), period.last());
    Margins margins =
        Margins.of(
            open.jobs().index(), costs, period.first(), period.last(), year.billedForVisits());
    WorkloadFindings workload = workload(open.book(), open, costs, taxYear, period);
    return new YearReports(
        List.of(margins.table(), margins.summary(), workload.figures()),
        List.of(
            MarginsReport.of(
                margins,
                margins.settings().texts().say("commands.period", period.first(), period.last())),
            workload.report()));
  }

  private static WorkloadFindings workload(
      Book book, OpenBook open, JobCosts costs, TaxYear taxYear, Period period) {
    Comparisons comparisons =
        Comparisons.of(
            ComparedJobs.of(open.jobs(), costs),
            period.first(),
            period.last(),
            ComparedJobs.rates(book.settings()));
    return Workload.of(
        book, open.jobs().all(), taxYear.first(), period.last(), ShapeDifference.of(comparisons));
  }
}

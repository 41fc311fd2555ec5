package clenchbook.tax;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.Report;
import clenchbook.tax.jurisdiction.TextFile;
import clenchbook.tax.year.Coverage;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.util.List;

/**
 * Everything the year's end says.
 *
 * @param period the days it covers
 * @param coverage how many of its months the book covers
 * @param reports the tax summary as pages, first in the farrier's language, then in others of the
 *     country
 * @param mileageLog the table {@code mileage-log}: the rows of Trips only
 * @param figures the tables of the folder {@code figures}
 * @param accountant the tables of the folder {@code accountant}
 * @param errors figures that could not be made for want of a rate, each naming its table
 * @param billedForVisits what the visits of the period were or will be billed without tax, whatever
 *     the bill's date
 * @param notes what the farrier should look at
 * @param files files of the regime's own beside the tables
 */
public record YearEndFindings(
    Period period,
    Coverage coverage,
    List<Report> reports,
    FigureTable mileageLog,
    List<FigureTable> figures,
    List<FigureTable> accountant,
    List<Message> errors,
    BigDecimal billedForVisits,
    List<Message> notes,
    List<TextFile> files) {
  /** Copies its lists. */
  public YearEndFindings {
    reports = List.copyOf(reports);
    figures = List.copyOf(figures);
    accountant = List.copyOf(accountant);
    errors = List.copyOf(errors);
    notes = List.copyOf(notes);
    files = List.copyOf(files);
  }
}

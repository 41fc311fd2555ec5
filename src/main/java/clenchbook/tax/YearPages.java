package clenchbook.tax;

import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.year.Coverage;
import java.util.List;

/**
 * What the pages of a year's end are made from.
 *
 * @param figures the figures
 * @param jurisdiction the country
 * @param summary the lines
 * @param tables the same as tables for files
 * @param coverage how many months the book covers
 * @param gauges the limits of turnover
 * @param tax tables beside the lines, those without rows left out
 */
record YearPages(
    YearFigures figures,
    Jurisdiction jurisdiction,
    List<SummaryLine> summary,
    YearTables tables,
    Coverage coverage,
    Gauges gauges,
    List<TaxTable> tax) {}

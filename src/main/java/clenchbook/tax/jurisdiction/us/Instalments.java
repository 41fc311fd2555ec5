package clenchbook.tax.jurisdiction.us;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.TaxYear;
import clenchbook.values.money.LargestRemainder;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** The instalments of estimated tax of a year, as a table. */
final class Instalments {
  private final YearFigures figures;
  private final RateLookup rates;

  Instalments(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  /**
   * The four instalments with an equal part of the self-employment tax; income tax is not in it.
   */
  FigureTable table(List<SummaryLine> summary) {
    TaxYear year = figures.input().taxYear();
    Optional<BigDecimal> tax =
        rates
            .ask(UsSummary.SELF_EMPLOYMENT_LINES, UsSummary.TAX, year.last())
            .flatMap(line -> SummaryLine.find(summary, line.value()))
            .map(SummaryLine::amount);
    List<Instalment> found = Instalment.of(year.year(), rates);
    List<BigDecimal> parts =
        tax.isEmpty() || found.isEmpty()
            ? List.of()
            : LargestRemainder.splitEqually(tax.get(), found.size(), figures.unit());
    return FiguresOf.rows(found)
        .count("instalment", Instalment::number)
        .column("period_ends", instalment -> instalment.periodEnds().toString())
        .column("due", instalment -> instalment.due().toString())
        .column(
            "part_of_self_employment_tax",
            instalment ->
                parts.isEmpty() ? "" : parts.get(found.indexOf(instalment)).toPlainString())
        .named("instalments");
  }
}

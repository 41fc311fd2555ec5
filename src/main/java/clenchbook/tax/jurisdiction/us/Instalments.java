package clenchbook.tax.jurisdiction.us;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.TaxYear;
import clenchbook.values.money.LargestRemainder;
import java.math.BigDecimal;
import java.util.ArrayList;
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
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      Instalment instalment = found.get(i);
      rows.add(
          List.of(
              String.valueOf(instalment.number()),
              instalment.periodEnds().toString(),
              instalment.due().toString(),
              parts.isEmpty() ? "" : parts.get(i).toPlainString()));
    }
    return new FigureTable(
        "instalments",
        List.of("instalment", "period_ends", "due", "part_of_self_employment_tax"),
        rows);
  }
}

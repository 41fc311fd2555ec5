package clenchbook.tax;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.TaxYear;
import clenchbook.values.Period;
import clenchbook.values.money.LargestRemainder;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures by quarter, and what falls due with each. */
final class QuarterTables {
  private final YearFigures figures;
  private final RateLookup rates;

  QuarterTables(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  /**
   * Each line of rows by quarter; in the United Kingdom cumulative, as the quarterly updates are.
   */
  FigureTable lines(List<SummaryLine> summary) {
    boolean cumulative = figures.regime() == Regime.UK;
    TaxYear year = figures.input().taxYear();
    List<List<String>> rows = new ArrayList<>();
    for (int quarter = 1; quarter <= 4; quarter++) {
      Period period = cumulative ? year.toEndOfQuarter(quarter) : year.quarter(quarter);
      if (figures.wholeYear() || figures.period().holds(year.quarter(quarter).last())) {
        addQuarter(rows, quarter, period, summary);
      }
    }
    return new FigureTable(
        cumulative ? "quarterly-updates" : "quarters",
        List.of("quarter", "from", "to", "due", "line", "name", "amount"),
        rows);
  }

  private void addQuarter(
      List<List<String>> rows, int quarter, Period period, List<SummaryLine> summary) {
    String due = figures.regime() == Regime.UK ? updateDue(quarter) : "";
    for (SummaryLine line : summary) {
      if (line.kind() == SummaryLine.Kind.TOTAL || line.kind() == SummaryLine.Kind.BESIDE) {
        continue;
      }
      BigDecimal amount =
          figures.unit().zero().add(LineItem.sum(LineItem.within(period, line.items())));
      rows.add(
          List.of(
              String.valueOf(quarter),
              period.first().toString(),
              period.last().toString(),
              due,
              line.head().line(),
              line.head().name(),
              amount.toPlainString()));
    }
  }

  private String updateDue(int quarter) {
    LocalDate first = figures.input().taxYear().first();
    return rates
        .find("uk/year", "update " + quarter, first)
        .map(rate -> rate.dayIn(first.getYear()).toString())
        .orElse("");
  }

  /**
   * The four instalments with an equal part of the self-employment tax; income tax is not in it.
   */
  FigureTable instalments(List<SummaryLine> summary) {
    TaxYear year = figures.input().taxYear();
    Optional<BigDecimal> tax =
        summary.stream()
            .filter(line -> line.head().line().equals("SE 12"))
            .map(SummaryLine::amount)
            .findFirst();
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

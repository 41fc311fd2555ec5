package clenchbook.tax.jurisdiction;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.RateUnit;
import clenchbook.values.Period;
import java.util.ArrayList;
import java.util.List;

/** Elections, allowances and limits that are named for the preparer and never computed. */
public final class NamedRates {
  private NamedRates() {}

  /** The rows of a table that hold on any day of the tax year, each with its value and source. */
  public static TaxTable of(YearFigures figures, RateLookup rates, String table) {
    List<List<String>> rows = new ArrayList<>();
    Period year = figures.input().taxYear().days();
    for (Rate rate : rates.within(table, year)) {
      String unit =
          rate.unit() == RateUnit.MONEY
              ? figures.input().book().settings().currency()
              : rate.unit().text();
      rows.add(List.of(nameWithin(rate, year), rate.value(), unit, rate.citation()));
    }
    return TaxTable.asIs(
        "Named, not computed",
        new FigureTable("allowances", List.of("name", "value", "unit", "source"), rows));
  }

  /** The name, with the days where the row holds for a part of the year only. */
  private static String nameWithin(Rate rate, Period year) {
    String from = rate.from().isAfter(year.first()) ? ", from " + rate.from() : "";
    String to = rate.to().isBefore(year.last()) ? ", to " + rate.to() : "";
    return rate.name() + from + to;
  }
}

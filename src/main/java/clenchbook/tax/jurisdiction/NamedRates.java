package clenchbook.tax.jurisdiction;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.RateUnit;
import clenchbook.values.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Elections, allowances and limits that are named for the preparer and never computed. */
public final class NamedRates {
  private NamedRates() {}

  /** The rows of tables that hold on any day of the tax year, each with its value and source. */
  public static TaxTable of(YearFigures figures, RateLookup rates, String... tables) {
    List<List<String>> rows = new ArrayList<>();
    Period year = figures.input().taxYear().days();
    List<Rate> named =
        Stream.of(tables).flatMap(table -> rates.within(table, year).stream()).toList();
    for (Rate rate : named) {
      String unit =
          rate.unit() == RateUnit.MONEY
              ? figures.input().book().settings().currency()
              : rate.unit().text();
      boolean due = rate.unit() == RateUnit.DAY || rate.unit() == RateUnit.DAY_NEXT_YEAR;
      String value =
          due
              ? BusinessDay.next(rate.dayIn(figures.input().taxYear().year())).toString()
              : rate.value();
      rows.add(List.of(nameWithin(rate, year), value, due ? "date" : unit, rate.citation()));
    }
    return TaxTable.asIs(
        "Named for the preparer, with their limits",
        new FigureTable("allowances", List.of("name", "value", "unit", "source"), rows));
  }

  /** The name, with the days where the row holds for a part of the year only. */
  private static String nameWithin(Rate rate, Period year) {
    String from = rate.from().isAfter(year.first()) ? ", from " + rate.from() : "";
    String to = rate.to().isBefore(year.last()) ? ", to " + rate.to() : "";
    return rate.name() + from + to;
  }
}

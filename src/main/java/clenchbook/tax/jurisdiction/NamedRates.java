package clenchbook.tax.jurisdiction;

import clenchbook.reports.blocks.FiguresOf;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.RateUnit;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import java.util.List;
import java.util.stream.Stream;

/** Elections, allowances and limits that are named for the preparer and never computed. */
public final class NamedRates {
  private final YearFigures figures;
  private final Period year;

  private NamedRates(YearFigures figures) {
    this.figures = figures;
    this.year = figures.input().taxYear().days();
  }

  /** The rows of tables that hold on any day of the tax year, each with its value and source. */
  public static TaxTable of(YearFigures figures, RateLookup rates, String... tables) {
    NamedRates rows = new NamedRates(figures);
    List<Rate> named =
        Stream.of(tables).flatMap(table -> rates.within(table, rows.year).stream()).toList();
    return TaxTable.asIs(
            Message.of("tax.allowances"),
            FiguresOf.rows(named)
                .column("name", rows::name)
                .column("value", rows::value)
                .column("unit", rows::unit)
                .column("source", Rate::citation)
                .named("allowances"))
        .said("name", named.stream().map(rows::saidName).toList())
        .said("unit", named.stream().map(rows::saidUnit).toList())
        .said("source", named.stream().map(Rate::cited).toList());
  }

  private static boolean isDue(Rate rate) {
    return rate.unit() == RateUnit.DAY || rate.unit() == RateUnit.DAY_NEXT_YEAR;
  }

  private String value(Rate rate) {
    return isDue(rate)
        ? BusinessDay.next(rate.dayIn(figures.input().taxYear().year())).toString()
        : rate.value();
  }

  private String unit(Rate rate) {
    return isDue(rate) ? "date" : rate.unit() == RateUnit.MONEY ? currency() : rate.unit().text();
  }

  private Message saidUnit(Rate rate) {
    if (isDue(rate)) {
      return RateUnit.DATE.said();
    }
    return rate.unit() == RateUnit.MONEY ? Message.literal(currency()) : rate.unit().said();
  }

  private String currency() {
    return figures.input().book().settings().currency();
  }

  /** The name, with the days where the row holds for a part of the year only. */
  private String name(Rate rate) {
    return rate.name()
        + (beginsLate(rate) ? ", from " + rate.from() : "")
        + (endsEarly(rate) ? ", to " + rate.to() : "");
  }

  private Message saidName(Rate rate) {
    Message begun =
        beginsLate(rate) ? Message.of("tax.named.from", rate.said(), rate.from()) : rate.said();
    return endsEarly(rate) ? Message.of("tax.named.to", begun, rate.to()) : begun;
  }

  private boolean beginsLate(Rate rate) {
    return rate.from().isAfter(year.first());
  }

  private boolean endsEarly(Rate rate) {
    return rate.to().isBefore(year.last());
  }
}

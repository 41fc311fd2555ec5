package clenchbook.tax.jurisdiction.uk;

import clenchbook.tax.jurisdiction.Quarters;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.TaxYear;
import clenchbook.texts.Message;
import java.util.stream.IntStream;

/** The quarterly updates of Making Tax Digital for Income Tax, and when they are due. */
final class QuarterlyUpdates {
  /** The table of the duty: its first row is the first year in which anybody has it. */
  static final String TABLE = "uk/quarterly-updates";

  private QuarterlyUpdates() {}

  /** Whether anybody has the duty in this tax year: no update is due before it began. */
  static boolean begun(TaxYear year, RateLookup rates) {
    return !rates.beginsAfter(TABLE, year.first());
  }

  /** Each update from the year's first day, with its due day. */
  static Quarters of(TaxYear year, RateLookup rates) {
    return new Quarters(
        "quarterly-updates",
        Message.of("britain.updates"),
        true,
        IntStream.rangeClosed(1, 4).mapToObj(quarter -> due(year, quarter, rates)).toList());
  }

  private static String due(TaxYear year, int quarter, RateLookup rates) {
    return rates
        .find(TABLE, "update " + quarter, year.first())
        .map(rate -> rate.dayIn(year.first().getYear()).toString())
        .orElse("");
  }
}

package clenchbook.tax;

import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.rates.RateTables;
import java.math.BigDecimal;
import java.time.LocalDate;

/** Figures of published examples, and the program's own rates to hold against them. */
public final class Published {
  private static final RateTables TABLES = RateFiles.bundled();

  private Published() {}

  public static BigDecimal number(String text) {
    return new BigDecimal(text);
  }

  /** The rate that the program's table gives on a day. */
  public static BigDecimal rate(String table, String code, String day) {
    return TABLES.find(table, code, LocalDate.parse(day)).orElseThrow().amount();
  }

  /** Whether the program's table has a rate on a day. */
  public static boolean isKnown(String table, String code, String day) {
    return TABLES.find(table, code, LocalDate.parse(day)).isPresent();
  }
}

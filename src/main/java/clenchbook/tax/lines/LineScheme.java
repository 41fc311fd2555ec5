package clenchbook.tax.lines;

import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.Regime;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The regime's lines in force in one year, by code. A code the table lacks stands under its own
 * word, so that the farrier's figures are never dropped, and never under another year's number.
 */
public final class LineScheme {
  private static final String OWN = "the program's own heading";

  private final Regime regime;
  private final LocalDate day;
  private final RateLookup rates;

  /** The lines of a regime in force on the last day of a year. */
  public LineScheme(Regime regime, LocalDate lastDay, RateLookup rates) {
    this.regime = regime;
    this.day = lastDay;
    this.rates = rates;
    if (rates.inForce(regime.lineTable(), lastDay).isEmpty()) {
      rates.lacks(regime.lineTable(), lastDay);
    }
  }

  public LineHead head(String code) {
    return find(regime.lineTable(), code)
        .orElseGet(() -> new LineHead(code, capitalised(code), OWN));
  }

  /**
   * By what a line is put in order: its number, or that of another year where this year's form
   * gives none.
   */
  String order(String code) {
    String line = head(code).line();
    if (isNumbered(line)) {
      return line;
    }
    return rates.all(regime.lineTable(), code).stream()
        .map(Rate::value)
        .filter(LineScheme::isNumbered)
        .findFirst()
        .orElse(line);
  }

  private static boolean isNumbered(String line) {
    return !line.isEmpty() && Character.isDigit(line.charAt(0));
  }

  public Optional<LineHead> find(String table, String code) {
    return rates.ask(table, code, day).map(LineScheme::headOf);
  }

  private static LineHead headOf(Rate rate) {
    return new LineHead(rate.value(), rate.name(), rate.citation());
  }

  private static String capitalised(String code) {
    return code.isEmpty() ? code : Character.toUpperCase(code.charAt(0)) + code.substring(1);
  }
}

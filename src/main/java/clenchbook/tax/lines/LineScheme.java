package clenchbook.tax.lines;

import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.Regime;
import clenchbook.texts.Message;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * The regime's lines in force in one year, by code. A code the table lacks stands under its own
 * word, so that the farrier's figures are never dropped, and never under another year's number.
 */
public final class LineScheme {
  /** The code of costs whose category no table knows. */
  public static final String UNMAPPED = "unmapped";

  private static final String OWN = "the program's own heading";

  private final Regime regime;
  private final LocalDate day;
  private final RateLookup rates;
  private final Map<String, Message> headings;

  /** The lines of a regime in force on the last day of a year. */
  public LineScheme(Regime regime, LocalDate lastDay, RateLookup rates) {
    this(regime, lastDay, rates, Map.of());
  }

  /**
   * The same under headings of the program's own.
   *
   * @param headings what pages call a line that the table lacks, by code
   */
  public LineScheme(
      Regime regime, LocalDate lastDay, RateLookup rates, Map<String, Message> headings) {
    this.headings = Map.copyOf(headings);
    this.regime = regime;
    this.day = lastDay;
    this.rates = rates;
    if (rates.inForce(regime.lineTable(), lastDay).isEmpty()) {
      rates.lacks(regime.lineTable(), lastDay);
    }
  }

  /** The line of a code; under its own word where the table lacks it. */
  public LineHead head(String code) {
    if (code.equals(UNMAPPED)) {
      return unmapped();
    }
    return find(regime.lineTable(), code).orElseGet(() -> heading(code));
  }

  private LineHead unmapped() {
    Wording name = Wording.of("Unmapped", "tax.line.unmappedName");
    return headings.isEmpty()
        ? new LineHead(Wording.of(UNMAPPED, "tax.line.unmapped"), name, OWN)
        : LineHead.unnumbered(UNMAPPED, name, OWN);
  }

  /** A heading of the program's own; its word in files is the code. */
  private LineHead heading(String code) {
    String name = capitalised(code);
    Message said = headings.get(code);
    return said == null
        ? new LineHead(code, name, OWN)
        : LineHead.unnumbered(code, new Wording(name, said), OWN);
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
    return row(table, code).map(LineScheme::headOf);
  }

  /** The row of a table behind a line. */
  public Optional<Rate> row(String table, String code) {
    return rates.ask(table, code, day);
  }

  private static LineHead headOf(Rate rate) {
    Wording name = new Wording(rate.name(), rate.said());
    return rate.isUnnumbered()
        ? LineHead.unnumbered(rate.value(), name, rate.citation())
        : new LineHead(rate.value(), name, rate.citation());
  }

  private static String capitalised(String code) {
    return code.isEmpty() ? code : Character.toUpperCase(code.charAt(0)) + code.substring(1);
  }
}

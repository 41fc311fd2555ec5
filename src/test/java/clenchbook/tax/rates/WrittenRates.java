package clenchbook.tax.rates;

import clenchbook.tax.year.Regime;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Rate tables written down in a test, row by row, as {@code "x/lines, work, line, 1"}: table, code,
 * unit, value, then a name, the first day and the last where they matter. What is not said is in
 * force from 2000 to 2099 and its source is {@code a test}.
 */
public final class WrittenRates {
  private WrittenRates() {}

  /** The invented regime of tests: refunds on a line of their own, the vehicle shared. */
  public static Regime regime() {
    return regime(true, true);
  }

  /** The same with refunds on a line of their own or not, and the vehicle shared or not. */
  public static Regime regime(boolean refundsApart, boolean vehicleShared) {
    return new Regime(
        "x",
        "lines",
        new Regime.Codes(
            "work", "tips", "refunds", refundsApart, "bought", "used", "vehicle", vehicleShared));
  }

  public static RateTables tables(String... rows) {
    Map<String, List<Rate>> tables = new LinkedHashMap<>();
    for (String row : rows) {
      Rate rate = row(row);
      tables.computeIfAbsent(rate.table(), unused -> new ArrayList<>()).add(rate);
    }
    List<RateTable> all = new ArrayList<>();
    tables.forEach((name, rates) -> all.add(new RateTable(name, rates)));
    return new RateTables(all);
  }

  public static RateLookup lookup(String... rows) {
    return new RateLookup(tables(rows));
  }

  public static Rate row(String text) {
    String[] cells = text.split("\\s*,\\s*", -1);
    return new Rate(
        cells[0],
        cells[1],
        cells.length > 4 ? cells[4] : cells[1],
        cells[3],
        RateUnit.find(cells[2]).orElseThrow(),
        LocalDate.parse(cells.length > 5 ? cells[5] : "2000-01-01"),
        LocalDate.parse(cells.length > 6 ? cells[6] : "2099-12-31"),
        cells.length > 7 ? cells[7] : "a test",
        "",
        Optional.empty(),
        false);
  }
}

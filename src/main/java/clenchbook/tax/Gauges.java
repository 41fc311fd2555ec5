package clenchbook.tax;

import clenchbook.book.Setting;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.page.PageWords;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.sales.TurnoverGauge;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;

/**
 * The limits of turnover of the book's country: its regime's, or under no country's regime those of
 * the setting Country, where a table of that country is carried.
 */
final class Gauges {
  private static final List<String> COLUMNS =
      List.of(
          "country",
          "limit",
          "name",
          "from",
          "to",
          "turnover",
          "percent_of_limit",
          "tolerated_up_to",
          "passed",
          "passes",
          "what_changes",
          "source");

  private final String country;
  private final List<TurnoverGauge> gauges;

  Gauges(YearFigures figures, Jurisdiction jurisdiction, RateLookup rates) {
    this.country = country(figures);
    this.gauges =
        TurnoverGauge.of(country, figures.period(), jurisdiction.turnover(figures, rates), rates);
  }

  private static String country(YearFigures figures) {
    String regime = figures.regime().word();
    if (!regime.equals("plain")) {
      return regime;
    }
    String code = figures.input().book().settings().text(Setting.COUNTRY).toLowerCase(Locale.ROOT);
    return code.equals("gb") ? "uk" : code;
  }

  /** What each says, in one line. */
  List<String> said(PageWords words) {
    return gauges.stream().map(gauge -> gauge.said(words)).toList();
  }

  TaxTable table() {
    List<List<String>> rows =
        gauges.stream()
            .map(
                gauge ->
                    List.of(
                        country,
                        gauge.limit().value(),
                        gauge.limit().name(),
                        gauge.first().atDay(1).toString(),
                        gauge.last().atEndOfMonth().toString(),
                        gauge.turnover().toPlainString(),
                        gauge.percent().toPlainString(),
                        gauge.tolerated().stripTrailingZeros().toPlainString(),
                        gauge.passed().map(YearMonth::toString).orElse(""),
                        gauge.passes().map(YearMonth::toString).orElse(""),
                        gauge.then(),
                        gauge.limit().citation()))
            .toList();
    return TaxTable.asIs(
        "Turnover against the limits", new FigureTable("turnover-gauge", COLUMNS, rows));
  }
}

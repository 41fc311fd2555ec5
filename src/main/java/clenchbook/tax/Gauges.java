package clenchbook.tax;

import clenchbook.book.Setting;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.TableOf;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.page.PageWords;
import clenchbook.tax.page.Sentence;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.sales.TurnoverGauge;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

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

  /** Every gauge with all it says, for the file; empty where the country has none. */
  Optional<FigureTable> figures() {
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
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(new FigureTable("turnover-gauge", COLUMNS, rows));
  }

  /** The gauges on the preparer's page; nothing where the country has none. */
  List<Block> blocks(PageWords words) {
    if (gauges.isEmpty()) {
      return List.of();
    }
    return List.of(
        new Block.Heading(2, words.say("Turnover against the limits")),
        TableOf.rows(gauges)
            .words(words.say("Limit"), 10, gauge -> name(gauge, words))
            .number(words.say("Limit of"), 4, gauge -> words.say(gauge.limit().value()))
            .number(words.say("Turnover"), 4, gauge -> words.amount(gauge.turnover()))
            .number(words.say("Used, %"), 3, gauge -> words.amount(gauge.percent()))
            .words(words.say("From, to"), 4, gauge -> gauge.first() + " " + gauge.last())
            .words(words.say("Passed, or passed at this pace"), 6, gauge -> when(gauge, words))
            .words(
                words.say("What changes then"),
                10,
                gauge -> marked(gauge.then(), gauge.thenMark(), words))
            .plain());
  }

  private static String name(TurnoverGauge gauge, PageWords words) {
    return marked(gauge.limit().name(), gauge.mark(), words);
  }

  private static String marked(String text, String mark, PageWords words) {
    return mark.isEmpty() ? words.say(text) : words.say(text) + " (" + words.say(mark) + ")";
  }

  private static String when(TurnoverGauge gauge, PageWords words) {
    return gauge
        .passed()
        .map(month -> words.say(Sentence.of("passed in {0}", month.toString())))
        .or(
            () ->
                gauge
                    .passes()
                    .map(month -> words.say(Sentence.of("in {0} at this pace", month.toString()))))
        .orElse(words.say("not within two years"));
  }

  /** Where the limits come from, for the annex. */
  Optional<Block> sources() {
    return gauges.isEmpty()
        ? Optional.empty()
        : Optional.of(
            TableOf.rows(gauges)
                .words("Limit", 8, gauge -> gauge.limit().name())
                .number("Of", 3, gauge -> gauge.limit().value())
                .words("Source", 12, gauge -> gauge.limit().citation())
                .captioned("Limits of turnover, with their sources"));
  }
}

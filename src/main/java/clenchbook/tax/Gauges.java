package clenchbook.tax;

import clenchbook.book.Setting;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.reports.blocks.TableOf;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.RateUnit;
import clenchbook.tax.sales.TurnoverGauge;
import clenchbook.texts.Message;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The limits of turnover of the book's country: its regime's, or under no country's regime those of
 * the setting Country, where a table of that country is carried.
 */
final class Gauges {
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
  List<Message> said() {
    return gauges.stream().map(TurnoverGauge::said).toList();
  }

  /** Every gauge with all it says, for the file; empty where the country has none. */
  Optional<FigureTable> figures() {
    return gauges.isEmpty()
        ? Optional.empty()
        : Optional.of(
            FiguresOf.rows(gauges)
                .column("country", gauge -> country)
                .column("limit", gauge -> gauge.limit().value())
                .column("name", gauge -> gauge.limit().name())
                .column("from", gauge -> gauge.first().atDay(1).toString())
                .column("to", gauge -> gauge.last().atEndOfMonth().toString())
                .amount("turnover", TurnoverGauge::turnover)
                .amount("percent_of_limit", TurnoverGauge::percent)
                .amount("tolerated_up_to", gauge -> gauge.tolerated().stripTrailingZeros())
                .column("passed", gauge -> gauge.passed().map(YearMonth::toString).orElse(""))
                .column("passes", gauge -> gauge.passes().map(YearMonth::toString).orElse(""))
                .column("what_changes", gauge -> gauge.then().map(Rate::value).orElse(""))
                .column("source", gauge -> gauge.limit().citation())
                .named("turnover-gauge"));
  }

  /** The gauges on the preparer's page; nothing where the country has none. */
  List<Block> blocks(PageWords words) {
    if (gauges.isEmpty()) {
      return List.of();
    }
    return List.of(
        new Block.Heading(2, words.say("tax.gauge.title")),
        TableOf.rows(gauges)
            .words(words.say("tax.gauge.limit"), 10, gauge -> words.say(name(gauge)))
            .number(words.say("tax.gauge.limitOf"), 4, gauge -> limit(gauge, words))
            .number(words.say("tax.gauge.turnover"), 4, gauge -> words.amount(gauge.turnover()))
            .number(words.say("tax.gauge.percent"), 3, gauge -> words.amount(gauge.percent()))
            .words(words.say("tax.gauge.fromTo"), 4, gauge -> gauge.first() + " " + gauge.last())
            .words(words.say("tax.gauge.when"), 6, gauge -> words.say(when(gauge)))
            .words(words.say("tax.gauge.changes"), 10, gauge -> words.say(gauge.changes()))
            .plain());
  }

  private static String limit(TurnoverGauge gauge, PageWords words) {
    return words.amount(gauge.limit().amount());
  }

  private static Message name(TurnoverGauge gauge) {
    Message name = gauge.limit().said();
    return gauge.mark().isEmpty() ? name : Message.of("tax.marked", name, gauge.mark());
  }

  private static Message when(TurnoverGauge gauge) {
    return gauge
        .passed()
        .map(month -> Message.of("tax.gauge.passedIn", month))
        .or(() -> gauge.passes().map(month -> Message.of("tax.gauge.passesIn", month)))
        .orElse(Message.of("tax.gauge.notSoon"));
  }

  /** What a row of a table is called on a page, also where its text says its value. */
  static Message named(Rate rate) {
    boolean words = rate.unit() == RateUnit.WORD && rate.table().endsWith("/turnover");
    if (words && rate.code().startsWith("then")) {
      return Message.of("tax.gauge.changes");
    }
    return words && rate.code().startsWith("period") ? Message.of("tax.gauge.period") : rate.said();
  }

  /** Where the limits come from, for the annex. */
  Optional<Block> sources(PageWords words) {
    return gauges.isEmpty()
        ? Optional.empty()
        : Optional.of(
            TableOf.rows(gauges)
                .words(words.say("tax.gauge.limit"), 8, gauge -> words.say(gauge.limit().said()))
                .number(words.say("tax.gauge.of"), 3, gauge -> limit(gauge, words))
                .words(
                    words.say("tax.column.source"), 12, gauge -> words.say(gauge.limit().cited()))
                .captioned(words.say("tax.gauge.sources")));
  }
}

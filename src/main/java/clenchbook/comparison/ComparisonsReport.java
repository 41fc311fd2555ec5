package clenchbook.comparison;

import clenchbook.comparison.breakeven.HorseDraws;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Exclusion;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.Report;
import clenchbook.reports.blocks.TableOf;
import clenchbook.statistics.Interval;
import clenchbook.statistics.StratifiedEstimate;
import clenchbook.statistics.StratumEstimate;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/** The report of the comparisons: plain words first, pictures, prices, then the strata. */
final class ComparisonsReport {

  /** A measure's strata beyond these stand in the file only. */
  private static final int MOST_STRATA = 40;

  private final Comparisons all;
  private final Amounts amounts;
  private final Reading reading;
  private final GuardReading second;
  private final BreakEvenReading breakEvens;
  private final ComparisonPictures pictures;
  private final PriceBlocks prices;
  private final LostShoesReading lostShoes;
  private final FigureText text;

  private ComparisonsReport(Comparisons all) {
    this.all = all;
    this.amounts = new Amounts(all.rates());
    this.reading = new Reading(all.rates());
    this.second = new GuardReading(all.rates());
    this.breakEvens = new BreakEvenReading(all);
    this.pictures = new ComparisonPictures(all);
    this.prices = new PriceBlocks(all);
    this.lostShoes = new LostShoesReading(all.rates());
    this.text = all.rates().text();
  }

  static Report of(Comparisons all, String business) {
    ComparisonsReport report = new ComparisonsReport(all);
    FigureText text = report.text;
    String period =
        text.say("comparison.report.period", text.date(all.from()), text.date(all.to()));
    return new Report(
        "comparisons",
        text.say("comparison.report.title"),
        text.say("comparison.report.label"),
        business.isEmpty() ? period : business + ", " + period,
        text.say("comparison.report.foot"),
        Optional.of(new ComparisonsAnswer(all).page()),
        report.evidence(),
        report.annex(),
        text.texts());
  }

  private List<Block> evidence() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(1, text.say("comparison.report.shows")));
    for (Question question : Question.values()) {
      blocks.add(shown(question));
    }
    blocks.add(new Block.Paragraph(lostShoes.sentence(all.lostShoes())));
    blocks.add(breakEvenTable());
    blocks.add(new Block.Paragraph(breakEvens.forge()));
    blocks.add(new Block.Paragraph(breakEvens.handmade()));
    blocks.add(new Block.Caution(text.say("comparison.report.caution")));
    blocks.add(new Block.PageBreak());
    blocks.addAll(prices.blocks());
    return blocks;
  }

  /** Every measure of one question with its verdict, or with what a verdict would take. */
  private Block shown(Question question) {
    return TableOf.rows(of(question))
        .words(text.say(question.heading()), 13, each -> text.say(each.measure().heading()))
        .number(
            text.say(WayTexts.jobs(question.a())),
            9,
            each -> count(each, StratifiedEstimate::countA))
        .number(
            text.say(WayTexts.jobs(question.b())),
            9,
            each -> count(each, StratifiedEstimate::countB))
        .number(
            text.say(WayTexts.mean(question.a())), 9, each -> mean(each, StratifiedEstimate::meanA))
        .number(
            text.say(WayTexts.mean(question.b())), 9, each -> mean(each, StratifiedEstimate::meanB))
        .number(
            text.say("comparison.report.difference"),
            9,
            each -> mean(each, StratifiedEstimate::difference))
        .number(text.say("comparison.report.from"), 8, each -> low(each.wider()))
        .number(text.say("comparison.report.to"), 8, each -> high(each.wider()))
        .words(
            text.say(
                WayTexts.by(question, "comparison.report.hotIs", "comparison.report.handmadeIs")),
            18,
            this::verdict)
        .plain();
  }

  private static String count(Comparison comparison, ToIntFunction<StratifiedEstimate> what) {
    return comparison.estimate().map(each -> String.valueOf(what.applyAsInt(each))).orElse("0");
  }

  private String mean(Comparison comparison, ToDoubleFunction<StratifiedEstimate> what) {
    return comparison
        .estimate()
        .map(each -> amounts.number(what.applyAsDouble(each), 2))
        .orElse("–");
  }

  private String verdict(Comparison comparison) {
    MoreJobs more = MoreJobs.of(comparison);
    return switch (comparison.verdict()) {
      case A_LOWER -> text.say("comparison.report.less");
      case A_HIGHER -> text.say("comparison.report.more");
      case NOT_ENOUGH_JOBS, NO_DIFFERENCE_SHOWN ->
          more.wanted()
              ? text.say("comparison.report.untold", more.words(comparison.question()))
              : text.say("comparison.report.same");
    };
  }

  private List<Block> annex() {
    List<Block> blocks = new ArrayList<>();
    words(blocks);
    dots(blocks);
    breakEven(blocks);
    blocks.addAll(prices.further());
    trends(blocks);
    use(blocks);
    return blocks;
  }

  private void words(List<Block> blocks) {
    blocks.add(new Block.Heading(1, text.say("comparison.report.words")));
    for (Question question : Question.values()) {
      blocks.add(new Block.Heading(2, text.say(question.heading())));
      for (Comparison comparison : of(question)) {
        blocks.add(new Block.Paragraph(reading.sentence(comparison)));
        second.guard(comparison).ifPresent(words -> blocks.add(new Block.Paragraph(words)));
      }
      second.guards(of(question)).ifPresent(words -> blocks.add(new Block.Paragraph(words)));
      blocks.add(new Block.Paragraph(cannotShow(question)));
    }
  }

  private String cannotShow(Question question) {
    return text.say(
        WayTexts.by(question, "comparison.report.hot.hides", "comparison.report.handmade.hides"));
  }

  private List<Comparison> of(Question question) {
    return all.comparisons().stream().filter(each -> each.question() == question).toList();
  }

  private void dots(List<Block> blocks) {
    List<Block> drawn =
        all.comparisons().stream().flatMap(each -> pictures.dots(each).stream()).toList();
    if (!drawn.isEmpty()) {
      blocks.add(new Block.Heading(1, text.say("comparison.report.dots")));
      blocks.add(new Block.Paragraph(text.say("comparison.report.dots.how")));
      blocks.addAll(drawn);
    }
  }

  private void breakEven(List<Block> blocks) {
    blocks.add(new Block.Heading(1, text.say("comparison.report.hangs")));
    pictures.curve().ifPresent(blocks::add);
    blocks.add(
        new Block.Paragraph(text.say("comparison.report.hangs.how", pictures.sensitivityWords())));
    pictures.sensitivity().ifPresent(blocks::add);
  }

  private Block breakEvenTable() {
    return TableOf.rows(all.breakEvens())
        .words(text.say("comparison.report.figure"), 4, each -> text.say(each.named()))
        .number(
            text.say("comparison.report.value"),
            2,
            each -> each.value().isPresent() ? amounts.number(each.value().getAsDouble(), 2) : "")
        .number(text.say("comparison.report.from"), 2, each -> low(each.interval()))
        .number(text.say("comparison.report.to"), 2, each -> high(each.interval()))
        .words(
            text.say("comparison.report.unit"),
            2,
            each -> text.say(each.unitTold(text.currencySign())))
        .words(text.say("comparison.report.restsOn"), 5, each -> text.say(each.restsOn()))
        .captioned(text.say("comparison.report.breakEvens"));
  }

  private String low(Optional<Interval> interval) {
    return interval.map(each -> amounts.number(each.low(), 2)).orElse("");
  }

  private String high(Optional<Interval> interval) {
    return interval.map(each -> amounts.number(each.high(), 2)).orElse("");
  }

  private void trends(List<Block> blocks) {
    List<Block> drawn =
        all.comparisons().stream()
            .filter(
                each ->
                    each.measure() == Measure.SHAPE_MINUTES_PER_SHOE
                        || each.measure() == Measure.EARNED_PER_HOUR)
            .flatMap(each -> pictures.trend(each).stream())
            .toList();
    if (!drawn.isEmpty()) {
      blocks.add(new Block.Heading(1, text.say("comparison.report.trends")));
      blocks.add(new Block.Paragraph(text.say("comparison.report.trends.how")));
      blocks.addAll(drawn);
    }
  }

  private void use(List<Block> blocks) {
    blocks.add(new Block.Heading(1, text.say("comparison.report.use")));
    for (Question question : Question.values()) {
      blocks.add(use(question));
    }
    blocks.add(new Block.Heading(1, text.say("comparison.sorts.heading")));
    List<Block> tables = all.comparisons().stream().flatMap(each -> strata(each).stream()).toList();
    if (tables.isEmpty()) {
      blocks.add(new Block.Paragraph(text.say("comparison.sorts.none")));
    }
    blocks.addAll(tables);
    blocks.add(new Block.Heading(1, text.say("comparison.report.how")));
    blocks.add(
        new Block.Paragraph(
            text.say(
                "comparison.report.method",
                Integer.toString(HorseDraws.MOST_TIMES),
                Integer.toString(HorseDraws.MANY_JOBS))));
  }

  /** Jobs used and left out, a column a measure. */
  private Block use(Question question) {
    List<Comparison> own = of(question);
    List<Used> rows = new ArrayList<>();
    rows.add(new Used(text.say("comparison.report.use.used"), each -> each.used().size()));
    for (Exclusion reason : Exclusion.values()) {
      if (own.stream().anyMatch(each -> each.leftOut().containsKey(reason))) {
        rows.add(new Used(text.say(reason.told()), each -> each.leftOut().getOrDefault(reason, 0)));
      }
    }
    TableOf<Used> table =
        TableOf.rows(rows).words(text.say("comparison.report.use.jobs"), 6, Used::words);
    own.forEach(each -> table.number(text.say(each.measure().told()), 2, row -> share(row, each)));
    return table.captioned(text.say("comparison.report.use.title", question.heading()));
  }

  /** What became of jobs, and how many of a comparison's. */
  private record Used(String words, ToIntFunction<Comparison> count) {}

  private String share(Used used, Comparison comparison) {
    int jobs = used.count().applyAsInt(comparison);
    return jobs == 0
        ? ""
        : "%s (%s)"
            .formatted(amounts.count(jobs), amounts.percent((double) jobs / comparison.jobs()));
  }

  private Optional<Block> strata(Comparison comparison) {
    Map<String, Message> sorts = comparison.sorts();
    List<StratumEstimate> found =
        comparison.estimate().stream().flatMap(each -> each.strata().stream()).toList();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Question question = comparison.question();
    return Optional.of(
        TableOf.rows(found.stream().limit(MOST_STRATA).toList())
            .words(
                text.say("comparison.sorts.sort"),
                6,
                each -> text.say(sorts.getOrDefault(each.stratum(), Message.NONE)))
            .count(text.say(WayTexts.jobsOfSort(question.a())), 2, each -> each.a().n())
            .count(text.say(WayTexts.jobsOfSort(question.b())), 2, each -> each.b().n())
            .number(
                text.say(WayTexts.meanOfSort(question.a())),
                2,
                each -> amounts.number(each.a().mean(), 2))
            .number(
                text.say(WayTexts.meanOfSort(question.b())),
                2,
                each -> amounts.number(each.b().mean(), 2))
            .number(
                text.say("comparison.sorts.difference"),
                2,
                each -> amounts.number(each.difference(), 2))
            .number(text.say("comparison.report.from"), 2, each -> low(each.plain()))
            .number(text.say("comparison.report.to"), 2, each -> high(each.plain()))
            .captioned(strataTitle(comparison, found.size())));
  }

  private String strataTitle(Comparison comparison, int sorts) {
    Message measure = comparison.measure().told();
    Message question = comparison.question().told();
    return text.say(
        sorts > MOST_STRATA
            ? Message.of("comparison.sorts.first", measure, question, MOST_STRATA, sorts)
            : Message.joined(", ", List.of(measure, question)));
  }
}

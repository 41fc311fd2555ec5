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

  private static final String FOOT =
      "A book, not an experiment: a difference may lie in the horses, the season or the place.";

  private static final String CAUTION =
      "This is a book, not an experiment. Nobody drew lots for which horse was shod which way, so a"
          + " difference may lie in the horses, the season or the place rather than in the method."
          + " Intervals are 95 % intervals. What is right for a horse's foot is for the farrier"
          + " and, where it is lame, for the vet to judge; these figures say nothing about it.";

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
    String period = report.text.date(all.from()) + " to " + report.text.date(all.to());
    return new Report(
        "comparisons",
        "Does it pay? Hot with cold, handmade with keg",
        "Does it pay?",
        business.isEmpty() ? period : business + ", " + period,
        FOOT,
        Optional.of(new ComparisonsAnswer(all).page()),
        report.evidence(),
        report.annex());
  }

  private List<Block> evidence() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(1, "What the book shows"));
    for (Question question : Question.values()) {
      blocks.add(shown(question));
    }
    blocks.add(new Block.Paragraph(lostShoes.sentence(all.lostShoes())));
    blocks.add(breakEvenTable());
    blocks.add(new Block.Paragraph(breakEvens.forge()));
    blocks.add(new Block.Paragraph(breakEvens.handmade()));
    blocks.add(new Block.Caution(CAUTION));
    blocks.add(new Block.PageBreak());
    blocks.addAll(prices.blocks());
    return blocks;
  }

  /** Every measure of one question with its verdict, or with what a verdict would take. */
  private Block shown(Question question) {
    return TableOf.rows(of(question))
        .words(text.say(question.heading()), 13, each -> text.say(each.measure().heading()))
        .number("Jobs " + question.nameA(), 9, each -> count(each, StratifiedEstimate::countA))
        .number("Jobs " + question.nameB(), 9, each -> count(each, StratifiedEstimate::countB))
        .number("Mean " + question.nameA(), 9, each -> mean(each, StratifiedEstimate::meanA))
        .number("Mean " + question.nameB(), 9, each -> mean(each, StratifiedEstimate::meanB))
        .number("Less or more", 9, each -> mean(each, StratifiedEstimate::difference))
        .number("From", 8, each -> low(each.wider()))
        .number("To", 8, each -> high(each.wider()))
        .words(Numbers.capital(question.nameA()) + " is", 18, this::verdict)
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
      case A_LOWER -> "less";
      case A_HIGHER -> "more";
      case NOT_ENOUGH_JOBS, NO_DIFFERENCE_SHOWN ->
          more.wanted()
              ? "can't tell yet: " + more.words(comparison.question(), amounts)
              : "can't tell: every job has the same figure";
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
    blocks.add(new Block.Heading(1, "In plain words"));
    for (Question question : Question.values()) {
      blocks.add(new Block.Heading(2, text.say(question.heading())));
      for (Comparison comparison : of(question)) {
        blocks.add(new Block.Paragraph(reading.sentence(comparison)));
        second.guard(comparison).ifPresent(text -> blocks.add(new Block.Paragraph(text)));
      }
      second.guards(of(question)).ifPresent(text -> blocks.add(new Block.Paragraph(text)));
      blocks.add(new Block.Paragraph(cannotShow(question)));
    }
  }

  private static String cannotShow(Question question) {
    return question == Question.HOT_WITH_COLD
        ? "What this can't show: whether the same horse would have taken the same time the other"
            + " way, since most horses keep one method."
        : "What this can't show: whether owners of keg-shod horses would pay a handmade price, or"
            + " how the horses would have gone in the other shoe.";
  }

  private List<Comparison> of(Question question) {
    return all.comparisons().stream().filter(each -> each.question() == question).toList();
  }

  private void dots(List<Block> blocks) {
    List<Block> drawn =
        all.comparisons().stream().flatMap(each -> pictures.dots(each).stream()).toList();
    if (!drawn.isEmpty()) {
      blocks.add(new Block.Heading(1, "The jobs themselves"));
      blocks.add(
          new Block.Paragraph(
              "Each dot is a job that was compared, set against the mean of the other method in the"
                  + " same sort of job: a dot at 2 is 2 more than that. On the right stands the"
                  + " difference with the wider of its two intervals; where that reaches over 0, no"
                  + " difference is shown."));
      blocks.addAll(drawn);
    }
  }

  private void breakEven(List<Block> blocks) {
    blocks.add(new Block.Heading(1, "What the break-even hangs on"));
    pictures.curve().ifPresent(blocks::add);
    blocks.add(
        new Block.Paragraph(
            "If steel, gas, the wage, the minutes of work or the price were a fifth less or more: "
                + pictures.sensitivityWords()));
    pictures.sensitivity().ifPresent(blocks::add);
  }

  private Block breakEvenTable() {
    return TableOf.rows(all.breakEvens())
        .words("Figure", 4, each -> text.say(each.named()))
        .number(
            "Value",
            2,
            each -> each.value().isPresent() ? amounts.number(each.value().getAsDouble(), 2) : "")
        .number("From", 2, each -> low(each.interval()))
        .number("To", 2, each -> high(each.interval()))
        .words("Unit", 2, each -> text.say(each.unitTold(text.currencySign())))
        .words("Rests on", 5, each -> text.say(each.restsOn()))
        .captioned("Break-even figures");
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
      blocks.add(new Block.Heading(1, "Month by month"));
      blocks.add(
          new Block.Paragraph(
              "Plain means of the months that have jobs of both, not like with like: a month's mix"
                  + " of work moves them, so read them for drift, not for a difference."));
      blocks.addAll(drawn);
    }
  }

  private void use(List<Block> blocks) {
    blocks.add(new Block.Heading(1, "How much of the book could be used"));
    for (Question question : Question.values()) {
      blocks.add(use(question));
    }
    blocks.add(new Block.Heading(1, "The sorts of job compared"));
    List<Block> tables = all.comparisons().stream().flatMap(each -> strata(each).stream()).toList();
    if (tables.isEmpty()) {
      blocks.add(new Block.Paragraph("No sort of job was done at least twice both ways."));
    }
    blocks.addAll(tables);
    blocks.add(new Block.Heading(1, "How it was worked out"));
    blocks.add(new Block.Paragraph(METHOD));
  }

  private static final String METHOD =
      "Only jobs of one sort are set against each other. The means of both sides of each sort are"
          + " subtracted and the differences averaged, a sort counting the more the more jobs it"
          + " has on both sides. Two intervals are made: one takes each job for itself, one leaves"
          + " out a horse at a time, because a horse mostly keeps one method; the wider one"
          + " decides. The first is Student's t with Satterthwaite's degrees of freedom, the second"
          + " the jackknife; shares of lost shoes have Wilson's interval and their difference"
          + " Newcombe's (his method 10). As a guard the same question is asked by least squares"
          + " with an effect for each horse and each sort of work. Break-even intervals come from"
          + " drawing the horses again "
          + HorseDraws.MOST_TIMES
          + " times, and fewer times in a book of more than "
          + HorseDraws.MANY_JOBS
          + " jobs.";

  /** Jobs used and left out, a column a measure. */
  private Block use(Question question) {
    List<Comparison> own = of(question);
    List<Used> rows = new ArrayList<>();
    rows.add(new Used("used", each -> each.used().size()));
    for (Exclusion reason : Exclusion.values()) {
      if (own.stream().anyMatch(each -> each.leftOut().containsKey(reason))) {
        rows.add(new Used(text.say(reason.told()), each -> each.leftOut().getOrDefault(reason, 0)));
      }
    }
    TableOf<Used> table = TableOf.rows(rows).words("Jobs", 6, Used::words);
    own.forEach(each -> table.number(text.say(each.measure().told()), 2, row -> share(row, each)));
    return table.captioned(
        text.say(question.heading()) + ": jobs of the period, fees and cancelled visits apart");
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
    String rest =
        found.size() > MOST_STRATA
            ? ", the first " + MOST_STRATA + " of " + found.size() + " sorts of job"
            : "";
    return Optional.of(
        TableOf.rows(found.stream().limit(MOST_STRATA).toList())
            .words(
                "Sort of job",
                6,
                each -> text.say(sorts.getOrDefault(each.stratum(), Message.NONE)))
            .count("Jobs, " + question.nameA(), 2, each -> each.a().n())
            .count("Jobs, " + question.nameB(), 2, each -> each.b().n())
            .number("Mean, " + question.nameA(), 2, each -> amounts.number(each.a().mean(), 2))
            .number("Mean, " + question.nameB(), 2, each -> amounts.number(each.b().mean(), 2))
            .number("Difference", 2, each -> amounts.number(each.difference(), 2))
            .number("From", 2, each -> low(each.plain()))
            .number("To", 2, each -> high(each.plain()))
            .captioned(
                text.say(comparison.measure().told()) + ", " + text.say(question.told()) + rest));
  }
}

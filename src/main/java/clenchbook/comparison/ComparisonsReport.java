package clenchbook.comparison;

import clenchbook.comparison.breakeven.BreakEven;
import clenchbook.comparison.breakeven.HorseDraws;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Exclusion;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Report;
import clenchbook.reports.blocks.TableOf;
import clenchbook.statistics.Interval;
import clenchbook.statistics.StratumEstimate;
import clenchbook.values.Basis;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  private ComparisonsReport(Comparisons all) {
    this.all = all;
    this.amounts = new Amounts(all.rates());
    this.reading = new Reading(all.rates());
    this.second = new GuardReading(all.rates());
    this.breakEvens = new BreakEvenReading(all);
    this.pictures = new ComparisonPictures(all);
  }

  static Report of(Comparisons all, String business) {
    ComparisonsReport report = new ComparisonsReport(all);
    List<Block> blocks = new ArrayList<>();
    report.words(blocks);
    report.dots(blocks);
    report.breakEven(blocks);
    blocks.addAll(new PriceBlocks(all).blocks());
    report.trends(blocks);
    report.annex(blocks);
    String period = all.from() + " to " + all.to();
    return new Report(
        "comparisons",
        "Does it pay?",
        business.isEmpty() ? period : business + ", " + period,
        FOOT,
        blocks);
  }

  static List<Block> page(Comparisons all) {
    ComparisonsReport report = new ComparisonsReport(all);
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(1, "Does it pay?"));
    blocks.add(
        new Block.Paragraph(
            "Over "
                + all.from()
                + " to "
                + all.to()
                + ", like compared with like. This is a book, not an experiment."));
    Comparison shape = all.comparison(Question.HOT_WITH_COLD, Measure.SHAPE_MINUTES_PER_SHOE);
    Comparison earned = all.comparison(Question.HANDMADE_WITH_KEG, Measure.EARNED_PER_HOUR);
    blocks.add(new Block.Paragraph(report.reading.sentence(shape)));
    report.second.guard(shape).ifPresent(text -> blocks.add(new Block.Paragraph(text)));
    report.pictures.dots(shape).ifPresent(blocks::add);
    blocks.add(new Block.Paragraph(report.breakEvens.forge()));
    blocks.add(new Block.Paragraph(report.reading.sentence(earned)));
    report.second.guard(earned).ifPresent(text -> blocks.add(new Block.Paragraph(text)));
    blocks.add(new Block.Paragraph(report.breakEvens.handmade()));
    blocks.add(new Block.Paragraph(LostShoesReading.sentence(all.lostShoes())));
    return List.copyOf(blocks);
  }

  private void words(List<Block> blocks) {
    keyFigures().ifPresent(blocks::add);
    blocks.add(new Block.Heading(1, "In plain words"));
    for (Question question : Question.values()) {
      blocks.add(new Block.Heading(2, heading(question)));
      for (Comparison comparison : of(question)) {
        blocks.add(new Block.Paragraph(reading.sentence(comparison)));
        second.guard(comparison).ifPresent(text -> blocks.add(new Block.Paragraph(text)));
      }
      second.guards(of(question)).ifPresent(text -> blocks.add(new Block.Paragraph(text)));
      if (question == Question.HOT_WITH_COLD) {
        blocks.add(new Block.Paragraph(LostShoesReading.sentence(all.lostShoes())));
        blocks.add(new Block.Paragraph(breakEvens.forge()));
      } else {
        blocks.add(new Block.Paragraph(breakEvens.handmade()));
      }
      blocks.add(new Block.Paragraph(cannotShow(question)));
    }
    blocks.add(new Block.Caution(CAUTION));
  }

  private static String heading(Question question) {
    return question == Question.HOT_WITH_COLD ? "Hot with cold" : "Handmade with keg";
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

  private Optional<Block> keyFigures() {
    List<Block.KeyFigure> figures = new ArrayList<>();
    all.shapeMinutesSavedPerShoe()
        .ifPresent(
            saved ->
                figures.add(
                    figure(
                        "Saved on a hot shoe",
                        Numbers.people(saved.minutes(), 2) + " min",
                        Basis.MEASURED)));
    BreakEven forge = all.breakEven(BreakEven.SHOES_PER_STOP);
    if (forge.value().isPresent()) {
      figures.add(
          figure(
              "The forge pays from",
              Numbers.people(forge.value().getAsDouble(), 1) + (forge.never() ? "" : " shoes"),
              all.rates().setupGiven() ? Basis.MEASURED : Basis.DEFAULT));
    }
    BreakEven extra = all.breakEven(BreakEven.EXTRA_PRICE);
    if (extra.value().isPresent()) {
      double more = extra.value().getAsDouble();
      figures.add(
          figure(
              more < 0 ? "A handmade set can spare" : "Extra a handmade set needs",
              amounts.money(Math.abs(more)),
              Basis.STANDARD));
    }
    return figures.isEmpty() ? Optional.empty() : Optional.of(new Block.KeyFigures(figures));
  }

  private static Block.KeyFigure figure(String label, String value, Basis basis) {
    return new Block.KeyFigure(label, value, Optional.of(basis));
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
    blocks.add(new Block.Heading(1, "Break-even"));
    blocks.add(breakEvenTable());
    pictures.curve().ifPresent(blocks::add);
    blocks.add(
        new Block.Paragraph(
            "If steel, gas, the wage, the minutes of work or the price were a fifth less or more: "
                + pictures.sensitivityWords()));
    pictures.sensitivity().ifPresent(blocks::add);
  }

  private Block breakEvenTable() {
    return TableOf.rows(all.breakEvens())
        .words("Figure", 4, BreakEven::quantity)
        .number(
            "Value",
            2,
            each -> each.value().isPresent() ? Numbers.people(each.value().getAsDouble(), 2) : "")
        .number("From", 2, each -> low(each.interval()))
        .number("To", 2, each -> high(each.interval()))
        .words(
            "Unit", 2, each -> each.unit().equals("money") ? all.rates().currency() : each.unit())
        .words("Rests on", 5, BreakEven::basis)
        .captioned("Break-even figures");
  }

  private static String low(Optional<Interval> interval) {
    return interval.map(each -> Numbers.people(each.low(), 2)).orElse("");
  }

  private static String high(Optional<Interval> interval) {
    return interval.map(each -> Numbers.people(each.high(), 2)).orElse("");
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

  private void annex(List<Block> blocks) {
    blocks.add(new Block.PageBreak());
    blocks.add(new Block.Heading(1, "How much of the book could be used"));
    for (Question question : Question.values()) {
      blocks.add(use(question));
    }
    blocks.add(new Block.Heading(1, "Annex: the sorts of job compared"));
    List<Block> tables = all.comparisons().stream().flatMap(each -> strata(each).stream()).toList();
    if (tables.isEmpty()) {
      blocks.add(new Block.Paragraph("No sort of job was done at least twice both ways."));
    }
    blocks.addAll(tables);
    blocks.add(new Block.Heading(1, "How it was reckoned"));
    blocks.add(new Block.Paragraph(METHOD));
  }

  private static final String METHOD =
      "Only jobs of one sort are set against each other. The means of both sides of each sort are"
          + " subtracted and the differences averaged, a sort counting the more the more jobs it"
          + " has on both sides. Two intervals are made: one takes each job for itself, one leaves"
          + " out a horse at a time, because a horse mostly keeps one method; the wider one"
          + " decides. As a guard the same question is asked by least squares with an effect for"
          + " each horse and each sort of work. Break-even intervals come from drawing the horses"
          + " again "
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
        rows.add(new Used(reason.words(), each -> each.leftOut().getOrDefault(reason, 0)));
      }
    }
    TableOf<Used> table = TableOf.rows(rows).words("Jobs", 6, Used::words);
    own.forEach(each -> table.number(each.measure().title(), 2, row -> row.of(each)));
    return table.captioned(
        heading(question) + ": jobs of the period, fees and cancelled visits apart");
  }

  /** What became of jobs, and how many of a comparison's. */
  private record Used(String words, ToIntFunction<Comparison> count) {
    private String of(Comparison comparison) {
      int jobs = count.applyAsInt(comparison);
      return jobs == 0
          ? ""
          : jobs + " (" + Numbers.percent((double) jobs / comparison.jobs()) + ")";
    }
  }

  private static Optional<Block> strata(Comparison comparison) {
    Map<String, String> names = comparison.names();
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
            .words("Sort of job", 6, each -> names.getOrDefault(each.stratum(), ""))
            .count("Jobs, " + question.nameA(), 2, each -> each.a().n())
            .count("Jobs, " + question.nameB(), 2, each -> each.b().n())
            .number("Mean, " + question.nameA(), 2, each -> Numbers.people(each.a().mean(), 2))
            .number("Mean, " + question.nameB(), 2, each -> Numbers.people(each.b().mean(), 2))
            .number("Difference", 2, each -> Numbers.people(each.difference(), 2))
            .number("From", 2, each -> low(each.plain()))
            .number("To", 2, each -> high(each.plain()))
            .captioned(comparison.measure().title() + ", " + question.title() + rest));
  }
}

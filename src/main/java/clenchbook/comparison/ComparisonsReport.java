package clenchbook.comparison;

import clenchbook.comparison.statistics.Interval;
import clenchbook.comparison.statistics.StratumEstimate;
import clenchbook.measure.Basis;
import clenchbook.report.Block;
import clenchbook.report.Report;
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
  private final Reading reading;
  private final ComparisonPictures pictures;

  private ComparisonsReport(Comparisons all) {
    this.all = all;
    this.reading = new Reading(all.rates());
    this.pictures = new ComparisonPictures(all, reading);
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
    report.reading.guard(shape).ifPresent(text -> blocks.add(new Block.Paragraph(text)));
    report.pictures.dots(shape).ifPresent(blocks::add);
    blocks.add(new Block.Paragraph(report.reading.forge(all)));
    blocks.add(new Block.Paragraph(report.reading.sentence(earned)));
    report.reading.guard(earned).ifPresent(text -> blocks.add(new Block.Paragraph(text)));
    blocks.add(new Block.Paragraph(report.reading.handmade(all)));
    blocks.add(new Block.Paragraph(report.reading.sentence(all.lostShoes())));
    return List.copyOf(blocks);
  }

  private void words(List<Block> blocks) {
    keyFigures().ifPresent(blocks::add);
    blocks.add(new Block.Heading(1, "In plain words"));
    for (Question question : Question.values()) {
      blocks.add(new Block.Heading(2, heading(question)));
      for (Comparison comparison : of(question)) {
        blocks.add(new Block.Paragraph(reading.sentence(comparison)));
        reading.guard(comparison).ifPresent(text -> blocks.add(new Block.Paragraph(text)));
      }
      reading.guards(of(question)).ifPresent(text -> blocks.add(new Block.Paragraph(text)));
      if (question == Question.HOT_WITH_COLD) {
        blocks.add(new Block.Paragraph(reading.sentence(all.lostShoes())));
        blocks.add(new Block.Paragraph(reading.forge(all)));
      } else {
        blocks.add(new Block.Paragraph(reading.handmade(all)));
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
              reading.money(Math.abs(more)),
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
    return new Block.Table(
        "Break-even figures",
        List.of(
            Block.Column.words("Figure", 4),
            Block.Column.number("Value", 2),
            Block.Column.number("From", 2),
            Block.Column.number("To", 2),
            Block.Column.words("Unit", 2),
            Block.Column.words("Rests on", 5)),
        all.breakEvens().stream()
            .map(
                each ->
                    Block.Row.of(
                        each.quantity(),
                        each.value().isPresent()
                            ? Numbers.people(each.value().getAsDouble(), 2)
                            : "",
                        each.interval().map(at -> Numbers.people(at.low(), 2)).orElse(""),
                        each.interval().map(at -> Numbers.people(at.high(), 2)).orElse(""),
                        each.unit().equals("money") ? all.rates().currency() : each.unit(),
                        each.basis()))
            .toList());
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
    List<Block.Column> columns = new ArrayList<>();
    columns.add(Block.Column.words("Jobs", 6));
    own.forEach(each -> columns.add(Block.Column.number(each.measure().title(), 2)));
    List<Block.Row> rows = new ArrayList<>();
    rows.add(useRow("used", own, each -> each.used().size()));
    for (Exclusion reason : Exclusion.values()) {
      if (own.stream().anyMatch(each -> each.leftOut().containsKey(reason))) {
        rows.add(useRow(reason.words(), own, each -> each.leftOut().getOrDefault(reason, 0)));
      }
    }
    return new Block.Table(
        heading(question) + ": jobs of the period, fees and cancelled visits apart", columns, rows);
  }

  private static Block.Row useRow(
      String words, List<Comparison> own, ToIntFunction<Comparison> count) {
    List<String> cells = new ArrayList<>(List.of(words));
    for (Comparison each : own) {
      int jobs = count.applyAsInt(each);
      cells.add(jobs == 0 ? "" : jobs + " (" + Numbers.percent((double) jobs / each.jobs()) + ")");
    }
    return Block.Row.of(cells.toArray(String[]::new));
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
        new Block.Table(
            comparison.measure().title() + ", " + question.title() + rest,
            List.of(
                Block.Column.words("Sort of job", 6),
                Block.Column.number("Jobs, " + question.nameA(), 2),
                Block.Column.number("Jobs, " + question.nameB(), 2),
                Block.Column.number("Mean, " + question.nameA(), 2),
                Block.Column.number("Mean, " + question.nameB(), 2),
                Block.Column.number("Difference", 2),
                Block.Column.number("From", 2),
                Block.Column.number("To", 2)),
            found.stream()
                .limit(MOST_STRATA)
                .map(each -> stratumRow(names.getOrDefault(each.stratum(), ""), each))
                .toList()));
  }

  private static Block.Row stratumRow(String name, StratumEstimate stratum) {
    Optional<Interval> interval = stratum.plain();
    return Block.Row.of(
        name,
        String.valueOf(stratum.a().n()),
        String.valueOf(stratum.b().n()),
        Numbers.people(stratum.a().mean(), 2),
        Numbers.people(stratum.b().mean(), 2),
        Numbers.people(stratum.difference(), 2),
        interval.map(each -> Numbers.people(each.low(), 2)).orElse(""),
        interval.map(each -> Numbers.people(each.high(), 2)).orElse(""));
  }
}

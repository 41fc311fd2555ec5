package clenchbook.comparison;

import clenchbook.comparison.breakeven.BreakEven;
import clenchbook.comparison.breakeven.ForgeBreakEven;
import clenchbook.comparison.breakeven.Sensitivity;
import clenchbook.comparison.breakeven.Shift;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.comparison.questions.Trend;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.statistics.Interval;
import clenchbook.statistics.Side;
import clenchbook.statistics.StratifiedEstimate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** The pictures of the comparisons; every number in them also stands in a file. */
final class ComparisonPictures {

  /** More dots than this only blacken the picture. */
  private static final int MOST_DOTS = 800;

  private final Comparisons all;
  private final Reading reading;
  private final Amounts amounts;

  ComparisonPictures(Comparisons all) {
    this.all = all;
    this.reading = new Reading(all.rates());
    this.amounts = new Amounts(all.rates());
  }

  /**
   * The jobs as dots against the mean of side B in their own stratum, with the difference and its
   * interval on the same scale; empty where there are too few.
   */
  Optional<Block> dots(Comparison comparison) {
    if (!comparison.enough()) {
      return Optional.empty();
    }
    StratifiedEstimate found = comparison.estimate().orElseThrow();
    Question question = comparison.question();
    List<Chart.DotGroup> groups = new ArrayList<>();
    groups.add(group(comparison, Side.A, question.nameA()));
    groups.add(group(comparison, Side.B, question.nameB()));
    Interval wider =
        comparison.wider().orElse(new Interval(found.difference(), found.difference()));
    groups.add(
        new Chart.DotGroup(
            question.nameA() + " less " + question.nameB(),
            List.of(),
            Optional.of(new Chart.Interval(found.difference(), wider.low(), wider.high()))));
    return Optional.of(
        new Block.Picture(
            Reading.title(comparison),
            reading.caption(comparison),
            new Chart.Dots(
                "each dot is a job, set against the mean of " + question.nameB() + " in its sort",
                unit(comparison.measure()) + " more or less",
                groups)));
  }

  private String unit(Measure measure) {
    return measure.unit() == Measure.Unit.MONEY ? all.rates().text().currencySign() : "minutes";
  }

  private String upTitle(Measure measure) {
    return measure.unit() == Measure.Unit.MONEY
        ? measure.title() + ", " + all.rates().text().currencySign()
        : measure.title();
  }

  private static Chart.DotGroup group(Comparison comparison, Side side, String name) {
    Map<String, Double> means = comparison.meansOfB();
    List<Double> values =
        comparison.used().stream()
            .filter(entry -> entry.side() == side)
            .map(entry -> entry.value() - means.getOrDefault(entry.stratum(), 0.0))
            .toList();
    int step = (values.size() + MOST_DOTS - 1) / MOST_DOTS;
    String every = step > 1 ? ", one in " + step + " drawn" : "";
    return new Chart.DotGroup(
        name + " (" + values.size() + every + ")",
        step > 1 ? everyOf(values, step) : values,
        Optional.empty());
  }

  private static List<Double> everyOf(List<Double> values, int step) {
    return IntStream.range(0, values.size())
        .filter(i -> i % step == 0)
        .mapToObj(values::get)
        .toList();
  }

  /** What lighting the forge brings, over shoes at the stop; empty where unknown. */
  Optional<Block> curve() {
    if (all.curve().isEmpty()) {
      return Optional.empty();
    }
    List<Chart.Line> lines = new ArrayList<>();
    lines.add(line("what lighting the forge brings", ForgeBreakEven.CurvePoint::gain, false));
    if (all.curve().stream().allMatch(point -> point.interval().isPresent())) {
      lines.add(line("at least", point -> point.interval().orElseThrow().low(), true));
      lines.add(line("at most", point -> point.interval().orElseThrow().high(), true));
    }
    BreakEven figure = all.breakEven(BreakEven.SHOES_PER_STOP);
    List<Chart.Limit> marks =
        figure.known() && figure.value().getAsDouble() <= ForgeBreakEven.LONGEST_STOP
            ? List.of(new Chart.Limit("it pays from here", figure.value().getAsDouble()))
            : List.of();
    return Optional.of(
        new Block.Picture(
            "When lighting the forge pays",
            "Above the line lighting the forge pays; the outer lines hold most of what the book"
                + " allows.",
            new Chart.Lines(
                "hot shoes at the stop",
                all.rates().text().currencySign() + " a stop",
                lines,
                List.of(new Chart.Limit("neither gain nor loss", 0)),
                marks)));
  }

  private Chart.Line line(
      String name, ToDoubleFunction<ForgeBreakEven.CurvePoint> up, boolean dashed) {
    return new Chart.Line(
        name,
        all.curve().stream()
            .map(point -> new Chart.Point(point.shoes(), up.applyAsDouble(point)))
            .toList(),
        dashed);
  }

  /** How far each input moves the money figures; empty where both are unknown. */
  Optional<Block> sensitivity() {
    List<Chart.Series> series = new ArrayList<>();
    series(Sensitivity.GAIN).ifPresent(series::add);
    series(BreakEven.EXTRA_PRICE).ifPresent(series::add);
    if (series.isEmpty()) {
      return Optional.empty();
    }
    List<String> categories =
        Shift.A_FIFTH.stream()
            .map(
                shift -> shift.name() + (shift.percent() < 0 ? ", a fifth less" : ", a fifth more"))
            .toList();
    return Optional.of(
        new Block.Picture(
            "What a fifth more or less changes",
            "Each bar is the change if one input were a fifth less or more and all else as it is.",
            new Chart.Columns(
                "",
                "change in " + all.rates().text().currencySign(),
                categories,
                series,
                false,
                true,
                List.of())));
  }

  private Optional<Chart.Series> series(String quantity) {
    List<Sensitivity> own =
        all.sensitivities().stream().filter(each -> each.quantity().equals(quantity)).toList();
    boolean drawn = !own.isEmpty() && own.stream().allMatch(each -> each.change().isPresent());
    String name =
        quantity.equals(Sensitivity.GAIN)
            ? "gain of the forge at a stop of " + Numbers.count(all.stopShoes(), "shoe", "shoes")
            : "extra price a handmade set needs";
    return drawn
        ? Optional.of(
            new Chart.Series(
                name,
                own.stream().map(each -> each.change().getAsDouble()).toList(),
                own.stream().map(each -> amounts.money(each.change().getAsDouble())).toList()))
        : Optional.empty();
  }

  /** Which input matters most for each figure. */
  String sensitivityWords() {
    List<String> parts = new ArrayList<>();
    most(Sensitivity.GAIN)
        .ifPresent(each -> parts.add("what the forge brings at a stop hangs most on " + each));
    most(BreakEven.EXTRA_PRICE)
        .ifPresent(each -> parts.add("the extra price of a handmade set hangs most on " + each));
    String words = String.join("; ", parts);
    return words.isEmpty()
        ? "There is nothing whose change could be shown yet."
        : Numbers.capital(words) + ".";
  }

  private Optional<String> most(String quantity) {
    return all.sensitivities().stream()
        .filter(each -> each.quantity().equals(quantity) && each.change().isPresent())
        .max(Comparator.comparingDouble(each -> Math.abs(each.change().getAsDouble())))
        .map(
            each ->
                "the "
                    + each.input()
                    + " ("
                    + (each.percent() < 0 ? "a fifth less" : "a fifth more")
                    + " changes it by "
                    + amounts.money(each.change().getAsDouble())
                    + ")");
  }

  /** One measure by month, for months with jobs on both sides; empty with fewer than two. */
  Optional<Block> trend(Comparison comparison) {
    List<Trend> own =
        all.trends().stream()
            .filter(each -> each.question() == comparison.question())
            .filter(each -> each.measure() == comparison.measure())
            .filter(each -> each.countA() > 0 && each.countB() > 0)
            .toList();
    if (!comparison.enough() || own.size() < 2) {
      return Optional.empty();
    }
    Question question = comparison.question();
    return Optional.of(
        new Block.Picture(
            upTitle(comparison.measure()) + ", by month, " + question.title(),
            "From %s to %s."
                .formatted(
                    all.rates().text().month(own.get(0).month()),
                    all.rates().text().month(own.get(own.size() - 1).month())),
            new Chart.Columns(
                "",
                upTitle(comparison.measure()),
                own.stream().map(each -> each.month().toString()).toList(),
                List.of(
                    new Chart.Series(
                        question.nameA(),
                        own.stream().map(each -> each.meanA().orElse(0)).toList()),
                    new Chart.Series(
                        question.nameB(),
                        own.stream().map(each -> each.meanB().orElse(0)).toList())),
                false,
                false,
                List.of())));
  }
}

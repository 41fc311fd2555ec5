package clenchbook.comparison;

import clenchbook.comparison.breakeven.BreakEven;
import clenchbook.comparison.breakeven.ForgeBreakEven;
import clenchbook.comparison.breakeven.Sensitivity;
import clenchbook.comparison.breakeven.Shift;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.comparison.questions.Trend;
import clenchbook.comparison.questions.Way;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.FigureText;
import clenchbook.statistics.Interval;
import clenchbook.statistics.Side;
import clenchbook.statistics.StratifiedEstimate;
import clenchbook.texts.Message;
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
  private final FigureText text;

  ComparisonPictures(Comparisons all) {
    this.all = all;
    this.reading = new Reading(all.rates());
    this.amounts = new Amounts(all.rates());
    this.text = all.rates().text();
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
    groups.add(group(comparison, Side.A, question.a()));
    groups.add(group(comparison, Side.B, question.b()));
    Interval wider =
        comparison.wider().orElse(new Interval(found.difference(), found.difference()));
    groups.add(
        new Chart.DotGroup(
            say(question, "comparison.dots.hot", "comparison.dots.handmade"),
            List.of(),
            Optional.of(new Chart.Interval(found.difference(), wider.low(), wider.high()))));
    return Optional.of(
        new Block.Picture(
            text.say(Reading.title(comparison)),
            reading.caption(comparison),
            new Chart.Dots(
                say(question, "comparison.dots.hot.across", "comparison.dots.handmade.across"),
                moreOrLess(comparison.measure()),
                groups)));
  }

  private String say(Question question, String hotKey, String handmadeKey) {
    return text.say(WayTexts.by(question, hotKey, handmadeKey));
  }

  private String moreOrLess(Measure measure) {
    return measure.unit() == Measure.Unit.MONEY
        ? text.say("comparison.dots.money", text.currencySign())
        : text.say("comparison.dots.minutes");
  }

  private Chart.DotGroup group(Comparison comparison, Side side, Way way) {
    Map<String, Double> means = comparison.meansOfB();
    List<Double> values =
        comparison.used().stream()
            .filter(entry -> entry.side() == side)
            .map(entry -> entry.value() - means.getOrDefault(entry.stratum(), 0.0))
            .toList();
    int step = (values.size() + MOST_DOTS - 1) / MOST_DOTS;
    String name = text.say(way.told());
    String jobs = String.valueOf(values.size());
    return new Chart.DotGroup(
        step > 1 ? text.say("comparison.dots.oneIn", name, jobs, step) : name + " (" + jobs + ")",
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
    lines.add(line(text.say("comparison.curve.brings"), ForgeBreakEven.CurvePoint::gain, false));
    if (all.curve().stream().allMatch(point -> point.interval().isPresent())) {
      lines.add(
          line(
              text.say("comparison.curve.atLeast"),
              point -> point.interval().orElseThrow().low(),
              true));
      lines.add(
          line(
              text.say("comparison.curve.atMost"),
              point -> point.interval().orElseThrow().high(),
              true));
    }
    BreakEven figure = all.breakEven(BreakEven.SHOES_PER_STOP);
    List<Chart.Limit> marks =
        figure.known() && figure.value().getAsDouble() <= ForgeBreakEven.LONGEST_STOP
            ? List.of(
                new Chart.Limit(text.say("comparison.curve.pays"), figure.value().getAsDouble()))
            : List.of();
    return Optional.of(
        new Block.Picture(
            text.say("comparison.curve.title"),
            text.say("comparison.curve.caption"),
            new Chart.Lines(
                text.say("comparison.curve.shoes"),
                text.say("comparison.curve.aStop", text.currencySign()),
                lines,
                List.of(new Chart.Limit(text.say("comparison.curve.zero"), 0)),
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
        Shift.A_FIFTH.stream().map(shift -> text.say(FifthTexts.bar(shift))).toList();
    return Optional.of(
        new Block.Picture(
            text.say("comparison.fifth.title"),
            text.say("comparison.fifth.caption"),
            new Chart.Columns(
                "",
                text.say("comparison.fifth.change", text.currencySign()),
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
            ? text.say("comparison.fifth.gain", all.stopShoes())
            : text.say("comparison.fifth.price");
    return drawn
        ? Optional.of(
            new Chart.Series(
                name,
                own.stream().map(each -> each.change().getAsDouble()).toList(),
                own.stream().map(each -> amounts.money(each.change().getAsDouble())).toList()))
        : Optional.empty();
  }

  /** Which input matters most for each figure. */
  Message sensitivityWords() {
    Optional<Message> forge = most(Sensitivity.GAIN);
    Optional<Message> set = most(BreakEven.EXTRA_PRICE);
    if (forge.isPresent() && set.isPresent()) {
      return Message.of("comparison.fifth.both", forge.get(), set.get());
    }
    return forge
        .map(each -> Message.of("comparison.fifth.forge", each))
        .or(() -> set.map(each -> Message.of("comparison.fifth.set", each)))
        .orElse(Message.of("comparison.fifth.none"));
  }

  private Optional<Message> most(String quantity) {
    return all.sensitivities().stream()
        .filter(each -> each.quantity().equals(quantity) && each.change().isPresent())
        .max(Comparator.comparingDouble(each -> Math.abs(each.change().getAsDouble())))
        .map(each -> FifthTexts.matters(each, amounts.money(each.change().getAsDouble())));
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
            text.say(
                "comparison.trend.title", amounts.titled(comparison.measure()), question.told()),
            text.say(
                "comparison.trend.caption",
                text.month(own.get(0).month()),
                text.month(own.get(own.size() - 1).month())),
            new Chart.Columns(
                "",
                amounts.titled(comparison.measure()),
                own.stream().map(each -> each.month().toString()).toList(),
                List.of(
                    new Chart.Series(
                        text.say(question.a().told()),
                        own.stream().map(each -> each.meanA().orElse(0)).toList()),
                    new Chart.Series(
                        text.say(question.b().told()),
                        own.stream().map(each -> each.meanB().orElse(0)).toList())),
                false,
                false,
                List.of())));
  }
}

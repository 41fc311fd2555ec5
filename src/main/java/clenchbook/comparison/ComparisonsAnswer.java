package clenchbook.comparison;

import clenchbook.comparison.breakeven.BreakEven;
import clenchbook.comparison.pricing.UnderList;
import clenchbook.comparison.pricing.WorkPrice;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.FirstPage;
import clenchbook.statistics.Interval;
import clenchbook.statistics.StratifiedEstimate;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The first page of the comparisons: what pays, and what to do about it, the most money first. */
final class ComparisonsAnswer {
  private final Comparisons all;
  private final Amounts amounts;
  private final FigureText text;
  private final BreakEvenReading breakEvens;

  ComparisonsAnswer(Comparisons all) {
    this.all = all;
    this.amounts = new Amounts(all.rates());
    this.text = all.rates().text();
    this.breakEvens = new BreakEvenReading(all);
  }

  FirstPage page() {
    return FirstPage.of(breakEvens.inShort(), picture(), toDo());
  }

  private Optional<Block.Picture> picture() {
    List<Chart.IntervalRow> rows = new ArrayList<>();
    for (Comparison comparison : all.comparisons()) {
      if (comparison.enough() && comparison.wider().isPresent()) {
        StratifiedEstimate found = comparison.estimate().orElseThrow();
        rows.add(row(comparison, found.difference(), comparison.wider().get()));
      }
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Block.Picture(
                text.say("comparison.first.picture"),
                text.say("comparison.first.caption"),
                new Chart.Intervals(
                    text.say("comparison.first.less"), text.say("comparison.first.more"), rows)));
  }

  private Chart.IntervalRow row(Comparison comparison, double difference, Interval wider) {
    int decimals = amounts.decimals(comparison.measure());
    String figures =
        text.say(
            "comparison.first.range",
            amounts.number(difference, decimals),
            amounts.number(wider.low(), decimals),
            amounts.number(wider.high(), decimals));
    String name =
        text.say(
            WayTexts.by(comparison.question(), "comparison.first.hot", "comparison.first.handmade"),
            amounts.titled(comparison.measure()));
    return new Chart.IntervalRow(
        name, new Chart.Interval(difference, wider.low(), wider.high()), figures);
  }

  /** One thing to do and the money of the period it is about. */
  private record Thing(BigDecimal money, String words) {}

  private List<String> toDo() {
    List<Thing> things = new ArrayList<>();
    handmade().ifPresent(things::add);
    all.pricing().works().stream()
        .filter(work -> work.loses().isPresent())
        .map(this::losing)
        .forEach(things::add);
    callbacks().ifPresent(things::add);
    all.pricing().underList().stream().findFirst().map(this::underList).ifPresent(things::add);
    return things.stream()
        .filter(thing -> thing.money().signum() > 0)
        .sorted(Comparator.comparing(Thing::money).reversed())
        .map(Thing::words)
        .toList();
  }

  /** Only where the interval leaves zero: a gain that may be none is not stated. */
  private Optional<Thing> handmade() {
    BreakEven extra = all.breakEven(BreakEven.EXTRA_PRICE);
    Optional<Interval> interval = extra.interval();
    if (!extra.known() || interval.isEmpty() || interval.get().low() <= 0) {
      return Optional.empty();
    }
    Comparison earned = all.comparison(Question.HANDMADE_WITH_KEG, Measure.EARNED_PER_HOUR);
    int sets = earned.estimate().map(StratifiedEstimate::countA).orElse(0);
    double more = extra.value().getAsDouble();
    return Optional.of(
        new Thing(
            Numbers.filed(more * sets),
            text.say(
                "comparison.do.handmade",
                amounts.money(more),
                amounts.money(interval.get().low()),
                amounts.money(interval.get().high()),
                sets)));
  }

  private Thing losing(WorkPrice work) {
    BigDecimal lost = work.leftAfterCallbacks().negate();
    String price = work.list().map(text::money).orElse("–");
    return new Thing(
        lost,
        text.say(
            "comparison.do.losing",
            work.work(),
            text.about(lost),
            work.jobs(),
            text.money(work.forWage()),
            price));
  }

  private Optional<Thing> callbacks() {
    BigDecimal cost = all.pricing().callbackNetCost();
    int count = all.pricing().callbacks().size();
    return count == 0
        ? Optional.empty()
        : Optional.of(
            new Thing(
                cost,
                text.say(
                    "comparison.do.callbacks",
                    count,
                    all.rates().callbackDays(),
                    text.about(cost))));
  }

  private Thing underList(UnderList first) {
    return new Thing(
        first.by(),
        text.say("comparison.do.under", first.owner(), text.about(first.by()), first.jobs()));
  }
}

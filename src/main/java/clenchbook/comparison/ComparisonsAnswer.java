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
    String sentence = "%s; %s.".formatted(breakEvens.forgeInShort(), breakEvens.handmadeInShort());
    return FirstPage.of(sentence, picture(), toDo());
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
                "Hot less cold, handmade less keg",
                "A dot is the difference, its line what the book allows; a hollow dot can't be told"
                    + " from none. Each row has its own scale.",
                new Chart.Intervals("hot or handmade is less", "it is more", rows)));
  }

  private Chart.IntervalRow row(Comparison comparison, double difference, Interval wider) {
    int decimals = amounts.decimals(comparison.measure());
    String figures =
        "%s (%s to %s)"
            .formatted(
                amounts.number(difference, decimals),
                amounts.number(wider.low(), decimals),
                amounts.number(wider.high(), decimals));
    String name =
        "%s: %s"
            .formatted(
                Numbers.capital(comparison.question().nameA()),
                comparison.measure().unit() == Measure.Unit.MONEY
                    ? comparison.measure().title() + ", " + text.currencySign()
                    : comparison.measure().title());
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
            "Ask %s more for a handmade set (most likely between %s and %s); %s sets were compared."
                .formatted(
                    amounts.money(more),
                    amounts.money(interval.get().low()),
                    amounts.money(interval.get().high()),
                    amounts.count(sets))));
  }

  private Thing losing(WorkPrice work) {
    BigDecimal lost = work.leftAfterCallbacks().negate();
    String price = work.list().map(text::money).orElse("–");
    return new Thing(
        lost,
        "%s lost %s over %s: a price of %s without tax would pay its costs and the wage; the list"
                .formatted(
                    work.work(), text.about(lost), jobs(work.jobs()), text.money(work.forWage()))
            + " has %s.".formatted(price));
  }

  private String jobs(int count) {
    return count == 1 ? "1 job" : amounts.count(count) + " jobs";
  }

  private Optional<Thing> callbacks() {
    BigDecimal cost = all.pricing().callbackNetCost();
    int count = all.pricing().callbacks().size();
    return count == 0
        ? Optional.empty()
        : Optional.of(
            new Thing(
                cost,
                (count == 1
                        ? "1 callback within %2$s days cost %3$s: the annex names the work it came"
                            + " from."
                        : "%1$s callbacks within %2$s days cost %3$s: the annex names the work they"
                            + " came from.")
                    .formatted(
                        amounts.count(count),
                        amounts.count(all.rates().callbackDays()),
                        text.about(cost))));
  }

  private Thing underList(UnderList first) {
    return new Thing(
        first.by(),
        "%s was billed %s under the list over %s: say whether that is still meant."
            .formatted(first.owner(), text.about(first.by()), jobs(first.jobs())));
  }
}

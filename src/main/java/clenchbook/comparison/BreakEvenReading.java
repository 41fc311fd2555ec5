package clenchbook.comparison;

import clenchbook.comparison.breakeven.BreakEven;
import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.reports.blocks.FigureText;
import clenchbook.statistics.Interval;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The break-evens in plain words: when the forge pays, what a handmade set needs. */
final class BreakEvenReading {
  private final Comparisons all;
  private final Amounts amounts;
  private final FigureText text;

  BreakEvenReading(Comparisons all) {
    this.all = all;
    this.amounts = new Amounts(all.rates());
    this.text = all.rates().text();
  }

  /** Both break-evens in one sentence. */
  String inShort() {
    return text.say(Message.joined("; ", List.of(forgeInShort(), handmadeInShort())));
  }

  private Message forgeInShort() {
    BreakEven figure = all.breakEven(BreakEven.SHOES_PER_STOP);
    if (figure.value().isEmpty() || unsure(figure)) {
      return Message.of("comparison.forge.inShort.untold");
    }
    return figure.never()
        ? Message.of("comparison.forge.inShort.never")
        : Message.of("comparison.forge.inShort.pays", ordinal(wholeShoes(figure)));
  }

  private Message handmadeInShort() {
    BreakEven extra = all.breakEven(BreakEven.EXTRA_PRICE);
    if (extra.value().isEmpty() || holdsZero(extra)) {
      return Message.of("comparison.set.inShort.untold");
    }
    double more = extra.value().getAsDouble();
    return more > 0
        ? Message.of("comparison.set.inShort.needs", amounts.money(more))
        : Message.of("comparison.set.inShort.earns");
  }

  /** An interval that holds zero states no gain and no loss. */
  private static boolean holdsZero(BreakEven figure) {
    return figure.interval().map(each -> each.holds(0)).orElse(true);
  }

  /** One end says that it pays, the other that it never does. */
  private static boolean unsure(BreakEven figure) {
    return figure
        .interval()
        .map(each -> Double.isInfinite(each.high()) != Double.isInfinite(each.low()))
        .orElse(false);
  }

  private static int wholeShoes(BreakEven figure) {
    return (int) Math.max(1, Math.ceil(figure.value().getAsDouble()));
  }

  /** From how many shoes lighting the forge pays. */
  String forge() {
    BreakEven figure = all.breakEven(BreakEven.SHOES_PER_STOP);
    if (figure.value().isEmpty()) {
      return text.say("comparison.forge.few");
    }
    List<Message> said = new ArrayList<>();
    said.add(forge(figure));
    missing(all.rates()).ifPresent(said::add);
    return text.say(Message.joined(" ", said));
  }

  private Message forge(BreakEven figure) {
    if (unsure(figure)) {
      Interval interval = figure.interval().orElseThrow();
      return Message.of("comparison.forge.untold", one(interval.low()), one(interval.high()));
    }
    if (figure.never()) {
      return Message.of("comparison.forge.never");
    }
    String from = one(figure.value().getAsDouble());
    Message shoe = ordinal(wholeShoes(figure));
    return figure
        .interval()
        .map(
            each ->
                Message.of(
                    "comparison.forge.paysBetween", from, shoe, one(each.low()), one(each.high())))
        .orElse(Message.of("comparison.forge.pays", from, shoe));
  }

  /** A number with one decimal. */
  private String one(double value) {
    return amounts.number(value, 1);
  }

  private static Optional<Message> missing(CompareRates rates) {
    if (rates.wage().isEmpty()) {
      return Optional.of(Message.of("comparison.forge.noWage"));
    }
    return rates.gasPerMinute().isEmpty()
        ? Optional.of(Message.of("comparison.forge.noGas"))
        : Optional.empty();
  }

  /** English has four endings; another language may give all four one text. */
  private static Message ordinal(int number) {
    boolean teen = number % 100 / 10 == 1;
    return Message.of(
        switch (teen ? 0 : number % 10) {
          case 1 -> "comparison.ordinal.st";
          case 2 -> "comparison.ordinal.nd";
          case 3 -> "comparison.ordinal.rd";
          default -> "comparison.ordinal.th";
        },
        number);
  }

  /** What a handmade set needs. */
  String handmade() {
    BreakEven extra = all.breakEven(BreakEven.EXTRA_PRICE);
    if (extra.value().isEmpty()) {
      return text.say("comparison.set.few");
    }
    if (holdsZero(extra)) {
      return text.say(cannotTell(extra));
    }
    Interval interval = extra.interval().orElseThrow();
    double more = extra.value().getAsDouble();
    Message price =
        Message.of(
            more > 0 ? "comparison.set.needs" : "comparison.set.earns",
            amounts.money(Math.abs(more)),
            amounts.money(interval.low()),
            amounts.money(interval.high()));
    Message making = making(all.breakEven(BreakEven.MAKING_MINUTES));
    return text.say(Message.joined("; ", List.of(price, making)));
  }

  private Message cannotTell(BreakEven extra) {
    Interval interval = extra.interval().orElse(new Interval(0, 0));
    return Message.of(
        "comparison.set.untold",
        amounts.money(interval.low()),
        amounts.money(interval.high()),
        moreSets(extra).sentence(Question.HANDMADE_WITH_KEG));
  }

  /** How many more sets it would take to tell. */
  MoreJobs moreSets(BreakEven figure) {
    Comparison earned = all.comparison(Question.HANDMADE_WITH_KEG, Measure.EARNED_PER_HOUR);
    MoreJobs jobs = MoreJobs.of(earned);
    int count =
        earned.estimate().map(each -> jobs.smallerIsA() ? each.countA() : each.countB()).orElse(0);
    return figure.interval().isEmpty() || !figure.known()
        ? jobs
        : MoreJobs.of(
            figure.value().getAsDouble(), figure.interval().get(), count, jobs.smallerIsA());
  }

  private Message making(BreakEven making) {
    if (making.value().isEmpty()) {
      return Message.of("comparison.making.untold");
    }
    if (making.never()) {
      return Message.of("comparison.making.never");
    }
    String may = one(making.value().getAsDouble());
    OptionalDouble now = all.breakEven(BreakEven.MAKING_NOW).value();
    return making
        .interval()
        .map(each -> mayBetween(may, each, now))
        .orElseGet(
            () ->
                now.isPresent()
                    ? Message.of("comparison.making.mayNow", may, one(now.getAsDouble()))
                    : Message.of("comparison.making.may", may));
  }

  private Message mayBetween(String may, Interval interval, OptionalDouble now) {
    String low = one(interval.low());
    String high = one(interval.high());
    return now.isPresent()
        ? Message.of("comparison.making.mayBetweenNow", may, low, high, one(now.getAsDouble()))
        : Message.of("comparison.making.mayBetween", may, low, high);
  }
}

package clenchbook.comparison;

import clenchbook.comparison.breakeven.BreakEven;
import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.statistics.Interval;

/** The break-evens in plain words: when the forge pays, what a handmade set needs. */
final class BreakEvenReading {
  private final Comparisons all;
  private final Amounts amounts;

  BreakEvenReading(Comparisons all) {
    this.all = all;
    this.amounts = new Amounts(all.rates());
  }

  /** From how many shoes lighting the forge pays, as a clause that begins a sentence. */
  String forgeInShort() {
    BreakEven figure = all.breakEven(BreakEven.SHOES_PER_STOP);
    if (figure.value().isEmpty() || unsure(figure)) {
      return "Whether lighting the forge pays in time can't be told yet";
    }
    return figure.never()
        ? "Lighting the forge never pays in time alone"
        : "Lighting the forge pays from the " + ordinal(wholeShoes(figure)) + " shoe at a stop";
  }

  /** What a handmade set needs, as a clause within a sentence. */
  String handmadeInShort() {
    BreakEven extra = all.breakEven(BreakEven.EXTRA_PRICE);
    if (extra.value().isEmpty() || holdsZero(extra)) {
      return "whether a handmade set earns by the hour what keg earns can't be told yet";
    }
    double more = extra.value().getAsDouble();
    return more > 0
        ? "a handmade set needs %s more to earn by the hour what keg earns"
            .formatted(amounts.money(more))
        : "a handmade set earns more by the hour than keg";
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
      return "Lighting the forge: the book has too few shaping times to say from how many shoes at"
          + " a stop it pays.";
    }
    String missing = missing(all.rates());
    if (unsure(figure)) {
      return "Lighting the forge: can't tell yet; anything from %s shoes at a stop to %s would fit."
              .formatted(
                  amounts.number(figure.interval().orElseThrow().low(), 1),
                  amounts.number(figure.interval().orElseThrow().high(), 1))
          + missing;
    }
    if (figure.never()) {
      return "Lighting the forge: by these figures it never pays in time alone, since the time a"
          + " hot shoe saves is worth no more than its gas."
          + missing;
    }
    return "Lighting the forge pays from "
        + amounts.number(figure.value().getAsDouble(), 1)
        + " shoes at a stop, that is from the "
        + ordinal(wholeShoes(figure))
        + " shoe"
        + range(figure, 1, "")
        + "."
        + missing;
  }

  private static String missing(CompareRates rates) {
    if (rates.wage().isEmpty()) {
      return " No hourly wage is given, so time counts for nothing here.";
    }
    return rates.gasPerMinute().isEmpty()
        ? " No gas cost is given, so gas counts for nothing here."
        : "";
  }

  private static String ordinal(int number) {
    int last = number % 10;
    boolean teen = number % 100 / 10 == 1;
    String ending =
        teen || last > 3 || last == 0 ? "th" : last == 1 ? "st" : last == 2 ? "nd" : "rd";
    return number + ending;
  }

  private String range(BreakEven figure, int decimals, String unit) {
    return figure
        .interval()
        .map(
            each ->
                " (most likely between "
                    + amounts.number(each.low(), decimals)
                    + " and "
                    + amounts.number(each.high(), decimals)
                    + unit
                    + ")")
        .orElse("");
  }

  /** What a handmade set needs. */
  String handmade() {
    BreakEven extra = all.breakEven(BreakEven.EXTRA_PRICE);
    BreakEven making = all.breakEven(BreakEven.MAKING_MINUTES);
    if (extra.value().isEmpty()) {
      return "Handmade shoes: the book has too few handmade and keg sets of one sort to say what a"
          + " handmade set should cost.";
    }
    if (holdsZero(extra)) {
      return cannotTell(extra);
    }
    double more = extra.value().getAsDouble();
    String price =
        more > 0
            ? "A handmade set needs "
                + amounts.money(more)
                + " more than it is charged now to earn by the hour what keg earns"
            : "A handmade set already earns more by the hour than keg; it would still do so at "
                + amounts.money(-more)
                + " less";
    String between =
        extra
            .interval()
            .map(
                each ->
                    " (the change in price most likely between "
                        + amounts.money(each.low())
                        + " and "
                        + amounts.money(each.high())
                        + ")")
            .orElse("");
    return price + between + "; " + making(making);
  }

  private String cannotTell(BreakEven extra) {
    Interval interval = extra.interval().orElse(new Interval(0, 0));
    return "A handmade set: can't tell yet whether it earns by the hour what keg earns; the change"
        + " in price at which it would lies most likely between %s and %s. %s."
            .formatted(
                amounts.money(interval.low()),
                amounts.money(interval.high()),
                Numbers.capital(moreSets(extra).words(Question.HANDMADE_WITH_KEG, amounts)));
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

  private String making(BreakEven making) {
    if (making.value().isEmpty()) {
      return "how long a shoe may take to make can't be told.";
    }
    if (making.never()) {
      return "at today's price it would not do so even if making took no time at all.";
    }
    String now =
        all.breakEven(BreakEven.MAKING_NOW).value().stream()
            .mapToObj(each -> ", against " + amounts.number(each, 1) + " now")
            .findFirst()
            .orElse("");
    return "at today's price a shoe may take "
        + amounts.number(making.value().getAsDouble(), 1)
        + " minutes to make"
        + range(making, 1, " minutes")
        + now
        + ".";
  }
}

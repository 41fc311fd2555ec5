package clenchbook.comparison;

import clenchbook.comparison.breakeven.BreakEven;
import clenchbook.comparison.questions.CompareRates;

/** The break-evens in plain words: when the forge pays, what a handmade set needs. */
final class BreakEvenReading {
  private final Comparisons all;
  private final Amounts amounts;

  BreakEvenReading(Comparisons all) {
    this.all = all;
    this.amounts = new Amounts(all.rates());
  }

  /** From how many shoes lighting the forge pays. */
  String forge() {
    BreakEven figure = all.breakEven(BreakEven.SHOES_PER_STOP);
    if (figure.value().isEmpty()) {
      return "Lighting the forge: the book has too few shaping times to say from how many shoes at"
          + " a stop it pays.";
    }
    String missing = missing(all.rates());
    if (figure.never()) {
      return "Lighting the forge: by these figures it never pays in time alone, since the time a"
          + " hot shoe saves is worth no more than its gas."
          + missing;
    }
    double value = figure.value().getAsDouble();
    return "Lighting the forge pays from "
        + Numbers.people(value, 1)
        + " shoes at a stop, that is from the "
        + ordinal((int) Math.max(1, Math.ceil(value)))
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

  private static String range(BreakEven figure, int decimals, String unit) {
    return figure
        .interval()
        .map(
            each ->
                " (most likely between "
                    + Numbers.people(each.low(), decimals)
                    + " and "
                    + Numbers.people(each.high(), decimals)
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

  private String making(BreakEven making) {
    if (making.value().isEmpty()) {
      return "how long a shoe may take to make can't be told.";
    }
    if (making.never()) {
      return "at today's price it would not do so even if making took no time at all.";
    }
    String now =
        all.breakEven(BreakEven.MAKING_NOW).value().stream()
            .mapToObj(each -> ", against " + Numbers.people(each, 1) + " now")
            .findFirst()
            .orElse("");
    return "at today's price a shoe may take "
        + Numbers.people(making.value().getAsDouble(), 1)
        + " minutes to make"
        + range(making, 1, " minutes")
        + now
        + ".";
  }
}

package clenchbook.comparison;

import clenchbook.comparison.statistics.EffectsModel;
import clenchbook.comparison.statistics.Interval;
import clenchbook.comparison.statistics.Proportion;
import clenchbook.comparison.statistics.Side;
import clenchbook.comparison.statistics.StratifiedEstimate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The comparisons in plain words, one sentence a question, fit to be read aloud. */
final class Reading {

  private final String currency;
  private final int digits;

  Reading(CompareRates rates) {
    this.currency = rates.currency();
    this.digits = rates.minor().digits();
  }

  /** An amount with its currency. */
  String money(double amount) {
    return Double.isInfinite(amount)
        ? Numbers.NEVER
        : currency + " " + Numbers.people(amount, digits);
  }

  /** What one question and measure shows. */
  String sentence(Comparison comparison) {
    return start(comparison) + shown(comparison);
  }

  private static String start(Comparison comparison) {
    String measure = comparison.measure().title();
    return measure.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
        + measure.substring(1)
        + ", "
        + comparison.question().title()
        + ": ";
  }

  private String shown(Comparison comparison) {
    return switch (comparison.verdict()) {
      case NOT_ENOUGH_JOBS -> tooThin(comparison);
      case A_LOWER, A_HIGHER -> difference(comparison);
      case NO_DIFFERENCE_SHOWN ->
          comparison.wider().isEmpty() ? noVariance(comparison) : noDifference(comparison);
    };
  }

  private static long count(Comparison comparison, Side side) {
    return comparison.entered().stream().filter(each -> each.side() == side).count();
  }

  private static String tooThin(Comparison comparison) {
    Question question = comparison.question();
    long a = count(comparison, Side.A);
    long b = count(comparison, Side.B);
    if (a == 0 && b == 0) {
      return "no job of this period can be used" + mostly(comparison.leftOut()) + ".";
    }
    if (a == 0 || b == 0) {
      String only = a == 0 ? question.nameB() : question.nameA();
      String none = a == 0 ? question.nameA() : question.nameB();
      return "all "
          + Numbers.count(a + b, "usable job was ", "usable jobs were ")
          + only
          + ", so there is nothing "
          + none
          + " to compare with.";
    }
    if (comparison.estimate().isEmpty()) {
      return "there are "
          + a
          + " "
          + question.nameA()
          + " and "
          + b
          + " "
          + question.nameB()
          + " jobs, but no sort of job was done at least twice both ways, so like can't be compared"
          + " with like.";
    }
    StratifiedEstimate found = comparison.estimate().get();
    return "only "
        + found.countA()
        + " "
        + question.nameA()
        + " and "
        + found.countB()
        + " "
        + question.nameB()
        + " jobs can be compared like with like, and fewer than "
        + Verdict.FEWEST
        + " on a side say nothing yet.";
  }

  private static String mostly(Map<Exclusion, Integer> leftOut) {
    return leftOut.entrySet().stream()
        .max(
            Comparator.comparingInt((Map.Entry<Exclusion, Integer> each) -> each.getValue())
                .thenComparing(Map.Entry::getKey, Comparator.reverseOrder()))
        .map(each -> ", most of them because: " + each.getKey().words())
        .orElse("");
  }

  /** Who was compared: jobs and horses on both sides, and in how many groups. */
  private static String compared(Comparison comparison, StratifiedEstimate found) {
    Question question = comparison.question();
    int groups = found.strata().size();
    return side(found.countA(), question.nameA(), found.groupsA())
        + " and "
        + side(found.countB(), question.nameB(), found.groupsB())
        + ", like with like"
        + (groups == 1 ? "" : " in " + groups + " sorts of job")
        + ", ";
  }

  private static String side(int jobs, String name, int horses) {
    return Numbers.count(jobs, name + " job on ", name + " jobs on ")
        + (horses == 1 ? "one horse only" : horses + " horses");
  }

  private String amount(Measure measure, double value) {
    if (measure.unit() == Measure.Unit.MONEY) {
      return money(value);
    }
    return Numbers.people(value, 2) + " minutes";
  }

  private String verb(Comparison comparison, boolean lower) {
    boolean minutes = comparison.measure().unit() == Measure.Unit.MINUTES;
    if (minutes) {
      return lower ? "took less time" : "took more time";
    }
    String verb = comparison.measure() == Measure.EARNED_PER_HOUR ? "earned" : "cost";
    return verb + (lower ? " less" : " more");
  }

  private String difference(Comparison comparison) {
    StratifiedEstimate found = comparison.estimate().orElseThrow();
    Interval wider = comparison.wider().orElseThrow();
    boolean lower = comparison.verdict() == Verdict.A_LOWER;
    double near = lower ? -wider.high() : wider.low();
    double far = lower ? -wider.low() : wider.high();
    return compared(comparison, found)
        + "show that "
        + comparison.question().nameA()
        + " "
        + verb(comparison, lower)
        + ": "
        + amount(comparison.measure(), Math.abs(found.difference()))
        + " ("
        + means(comparison, found)
        + "), and most likely between "
        + amount(comparison.measure(), near)
        + " and "
        + amount(comparison.measure(), far)
        + ".";
  }

  /** Both means, as {@code 5.06 against 6.95}. */
  private String means(Comparison comparison, StratifiedEstimate found) {
    int decimals = comparison.measure().unit() == Measure.Unit.MONEY ? digits : 2;
    return Numbers.people(found.meanA(), decimals)
        + " against "
        + Numbers.people(found.meanB(), decimals);
  }

  /** A picture's figures in a line. */
  String caption(Comparison comparison) {
    StratifiedEstimate found = comparison.estimate().orElseThrow();
    int decimals = comparison.measure().unit() == Measure.Unit.MONEY ? digits : 2;
    Question question = comparison.question();
    return question.nameA()
        + " less "
        + question.nameB()
        + ": "
        + Numbers.people(found.difference(), decimals)
        + comparison
            .wider()
            .map(
                each ->
                    ", most likely from "
                        + Numbers.people(each.low(), decimals)
                        + " to "
                        + Numbers.people(each.high(), decimals))
            .orElse(", without an interval, since nothing varies")
        + "; means "
        + means(comparison, found)
        + ".";
  }

  private String noDifference(Comparison comparison) {
    StratifiedEstimate found = comparison.estimate().orElseThrow();
    Interval wider = comparison.wider().orElseThrow();
    Measure measure = comparison.measure();
    return compared(comparison, found)
        + "show no difference ("
        + means(comparison, found)
        + "): anything from "
        + amount(measure, Math.abs(wider.low()))
        + " less to "
        + amount(measure, Math.abs(wider.high()))
        + " more for "
        + comparison.question().nameA()
        + " would fit the book.";
  }

  private String noVariance(Comparison comparison) {
    StratifiedEstimate found = comparison.estimate().orElseThrow();
    return compared(comparison, found)
        + "differ by "
        + amount(comparison.measure(), Math.abs(found.difference()))
        + ", but every job of a sort has the very same figure, so nothing tells how sure that is.";
  }

  /** What the second way says of it; empty where both agree. */
  Optional<String> guard(Comparison comparison) {
    if (!comparison.enough()) {
      return Optional.empty();
    }
    return switch (comparison.agreement()) {
      case AGREE -> Optional.empty();
      case NOT_TRIED -> Optional.empty();
      case OTHER_SIGN, INTERVALS_PART -> Optional.of(disagree(comparison));
    };
  }

  private String disagree(Comparison comparison) {
    EffectsModel.Answer guard = comparison.guard().orElseThrow();
    Measure measure = comparison.measure();
    double first = comparison.estimate().orElseThrow().difference();
    boolean sign = comparison.agreement() == Comparison.Agreement.OTHER_SIGN;
    return start(comparison)
        + "the two ways of reckoning do not agree: like with like gives "
        + signed(measure, first)
        + ", each horse set against itself gives "
        + signed(measure, guard.difference())
        + (sign ? "" : ", and their intervals have nothing in common")
        + (bothHoldZero(comparison) ? "; both are well within what chance can do" : "")
        + ". Trust neither until there are more horses shod both ways ("
        + guard.groupsOnBothSides()
        + " so far).";
  }

  private static boolean bothHoldZero(Comparison comparison) {
    boolean first = comparison.wider().map(each -> each.holds(0)).orElse(false);
    boolean second =
        comparison
            .guard()
            .flatMap(EffectsModel.Answer::interval)
            .map(each -> each.holds(0))
            .orElse(false);
    return first && second;
  }

  /** Which measures the second way agrees on, and which it can't be tried on; empty for neither. */
  Optional<String> guards(List<Comparison> ofOneQuestion) {
    List<Comparison> enough = ofOneQuestion.stream().filter(Comparison::enough).toList();
    String agree = measures(enough, Comparison.Agreement.AGREE);
    String untried = measures(enough, Comparison.Agreement.NOT_TRIED);
    List<String> parts = new ArrayList<>();
    if (!agree.isEmpty()) {
      parts.add("agrees on " + agree);
    }
    if (!untried.isEmpty()) {
      parts.add("could not be tried on " + untried + ", since too few horses were shod both ways");
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "The second way, which sets each horse against itself, "
                + String.join("; it ", parts)
                + ".");
  }

  private static String measures(List<Comparison> some, Comparison.Agreement agreement) {
    return some.stream()
        .filter(each -> each.agreement() == agreement)
        .map(each -> each.measure().title())
        .collect(Collectors.joining(", "));
  }

  private String signed(Measure measure, double value) {
    return amount(measure, Math.abs(value)) + (value < 0 ? " less" : " more");
  }

  /** What the shoes found lost show. */
  String sentence(LostShoes lost) {
    String start = "Lost shoes, hot with cold: ";
    Optional<Proportion> hot = lost.hot().share();
    Optional<Proportion> cold = lost.cold().share();
    if (hot.isEmpty() || cold.isEmpty()) {
      String none = hot.isEmpty() ? "hot" : "cold";
      return start
          + "no shoe put on "
          + none
          + " was seen again in this period, so there is nothing to compare.";
    }
    return start
        + worn(lost.hot(), "hot", lost.horsesHot())
        + "; "
        + worn(lost.cold(), "cold", lost.horsesCold())
        + "; "
        + lostVerdict(lost);
  }

  private static String worn(LostShoes.Tally tally, String method, int horses) {
    Proportion share = tally.share().orElseThrow();
    return "of "
        + Numbers.people(tally.on(), 0)
        + " shoes put on "
        + method
        + " (on "
        + Numbers.count(horses, "horse", "horses")
        + ") "
        + Numbers.percent(share.share())
        + " were lost before the next visit, most likely between "
        + Numbers.percent(share.wilson().low())
        + " and "
        + Numbers.percent(share.wilson().high());
  }

  private static String lostVerdict(LostShoes lost) {
    return switch (lost.verdict()) {
      case A_LOWER -> "hot-fitted shoes were lost less often.";
      case A_HIGHER -> "hot-fitted shoes were lost more often.";
      case NO_DIFFERENCE_SHOWN -> "that shows no difference yet.";
      case NOT_ENOUGH_JOBS -> "that is too few to say anything.";
    };
  }

  /** From how many shoes lighting the forge pays. */
  String forge(Comparisons all) {
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
  String handmade(Comparisons all) {
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
                + money(more)
                + " more than it is charged now to earn by the hour what keg earns"
            : "A handmade set already earns more by the hour than keg; it would still do so at "
                + money(-more)
                + " less";
    String between =
        extra
            .interval()
            .map(
                each ->
                    " (the change in price most likely between "
                        + money(each.low())
                        + " and "
                        + money(each.high())
                        + ")")
            .orElse("");
    return price + between + "; " + making(all, making);
  }

  private static String making(Comparisons all, BreakEven making) {
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

package clenchbook.comparison;

import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Exclusion;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.comparison.questions.Verdict;
import clenchbook.statistics.Interval;
import clenchbook.statistics.Side;
import clenchbook.statistics.StratifiedEstimate;
import java.util.Comparator;
import java.util.Map;

/** The comparisons in plain words, one sentence a question, fit to be read aloud. */
public final class Reading {
  private final Amounts amounts;

  Reading(CompareRates rates) {
    this.amounts = new Amounts(rates);
  }

  /** What one question and measure shows. */
  String sentence(Comparison comparison) {
    return start(comparison) + shown(comparison);
  }

  /** The words that a sentence on a comparison begins with. */
  static String start(Comparison comparison) {
    return title(comparison) + ": ";
  }

  /** The measure and the question, as a sentence or a picture's title begins. */
  static String title(Comparison comparison) {
    return Numbers.capital(comparison.measure().title()) + ", " + comparison.question().title();
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
  private String compared(Comparison comparison, StratifiedEstimate found) {
    Question question = comparison.question();
    int groups = found.strata().size();
    return side(found.countA(), question.nameA(), found.groupsA())
        + " and "
        + side(found.countB(), question.nameB(), found.groupsB())
        + ", like with like"
        + (groups == 1 ? "" : " in " + groups + " sorts of job")
        + ", ";
  }

  private String side(int jobs, String name, int horses) {
    return (jobs == 1 ? "1 %1$s job on " : "%2$s %1$s jobs on ")
            .formatted(name, amounts.count(jobs))
        + (horses == 1 ? "one horse only" : amounts.count(horses) + " horses");
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
        + amounts.of(comparison.measure(), Math.abs(found.difference()))
        + " ("
        + means(comparison, found)
        + "), and most likely between "
        + amounts.of(comparison.measure(), near)
        + " and "
        + amounts.of(comparison.measure(), far)
        + ".";
  }

  /** Both means, as {@code 5.06 against 6.95}. */
  private String means(Comparison comparison, StratifiedEstimate found) {
    int decimals = amounts.decimals(comparison.measure());
    return amounts.number(found.meanA(), decimals)
        + " against "
        + amounts.number(found.meanB(), decimals);
  }

  /** A picture's figures in a line. */
  String caption(Comparison comparison) {
    StratifiedEstimate found = comparison.estimate().orElseThrow();
    int decimals = amounts.decimals(comparison.measure());
    Question question = comparison.question();
    return question.nameA()
        + " less "
        + question.nameB()
        + ": "
        + amounts.number(found.difference(), decimals)
        + comparison
            .wider()
            .map(
                each ->
                    ", most likely from "
                        + amounts.number(each.low(), decimals)
                        + " to "
                        + amounts.number(each.high(), decimals))
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
        + "can't tell yet ("
        + means(comparison, found)
        + "): anything from "
        + amounts.of(measure, Math.abs(wider.low()))
        + " less to "
        + amounts.of(measure, Math.abs(wider.high()))
        + " more for "
        + comparison.question().nameA()
        + " would fit the book. "
        + Numbers.capital(MoreJobs.of(comparison).words(comparison.question(), amounts))
        + ".";
  }

  private String noVariance(Comparison comparison) {
    StratifiedEstimate found = comparison.estimate().orElseThrow();
    return compared(comparison, found)
        + "differ by "
        + amounts.of(comparison.measure(), Math.abs(found.difference()))
        + ", but every job of a sort has the very same figure, so nothing tells how sure that is.";
  }
}

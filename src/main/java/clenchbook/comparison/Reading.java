package clenchbook.comparison;

import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Exclusion;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.comparison.questions.Verdict;
import clenchbook.reports.blocks.FigureText;
import clenchbook.statistics.Interval;
import clenchbook.statistics.Side;
import clenchbook.statistics.StratifiedEstimate;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** The comparisons in plain words, one sentence a question, fit to be read aloud. */
public final class Reading {
  private final Amounts amounts;
  private final FigureText text;

  Reading(CompareRates rates) {
    this.amounts = new Amounts(rates);
    this.text = rates.text();
  }

  /** What one question and measure shows. */
  String sentence(Comparison comparison) {
    return text.say(shown(comparison));
  }

  /** The measure and the question, as a sentence or a picture's title begins. */
  static Message title(Comparison comparison) {
    return Message.joined(
        ", ", List.of(comparison.measure().heading(), comparison.question().told()));
  }

  private Message shown(Comparison comparison) {
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

  private static Message tooThin(Comparison comparison) {
    Question question = comparison.question();
    Message title = title(comparison);
    long a = count(comparison, Side.A);
    long b = count(comparison, Side.B);
    if (a == 0 && b == 0) {
      return none(title, comparison.leftOut());
    }
    if (a == 0 || b == 0) {
      return WayTexts.only(a == 0 ? question.b() : question.a(), title, a + b);
    }
    return comparison
        .estimate()
        .map(found -> few(question, title, found))
        .orElseGet(
            () ->
                Message.of(
                    WayTexts.by(question, "comparison.unlike.hot", "comparison.unlike.handmade"),
                    title,
                    a,
                    b));
  }

  private static Message few(Question question, Message title, StratifiedEstimate found) {
    return Message.of(
        WayTexts.by(question, "comparison.few.hot", "comparison.few.handmade"),
        title,
        found.countA(),
        found.countB(),
        Verdict.FEWEST);
  }

  private static Message none(Message title, Map<Exclusion, Integer> leftOut) {
    return leftOut.entrySet().stream()
        .max(
            Comparator.comparingInt((Map.Entry<Exclusion, Integer> each) -> each.getValue())
                .thenComparing(Map.Entry::getKey, Comparator.reverseOrder()))
        .map(each -> Message.of("comparison.noneMostly", title, each.getKey().told()))
        .orElse(Message.of("comparison.none", title));
  }

  /** A text that begins with the title, who was compared, and in how many sorts of job. */
  private Message compared(String key, Comparison comparison, Object... further) {
    StratifiedEstimate found = comparison.estimate().orElseThrow();
    Question question = comparison.question();
    List<Object> gaps = new ArrayList<>();
    gaps.add(title(comparison));
    gaps.add(WayTexts.jobsOnHorses(question.a(), found.countA(), found.groupsA()));
    gaps.add(WayTexts.jobsOnHorses(question.b(), found.countB(), found.groupsB()));
    gaps.add(found.strata().size());
    gaps.addAll(List.of(further));
    return new Message(key, gaps);
  }

  private static Message verb(Comparison comparison, boolean lower) {
    boolean hot = comparison.question() == Question.HOT_WITH_COLD;
    if (comparison.measure().unit() == Measure.Unit.MINUTES) {
      return Message.of(hot ? hotTook(lower) : handmadeTook(lower));
    }
    boolean earned = comparison.measure() == Measure.EARNED_PER_HOUR;
    return Message.of(hot ? hotBrought(earned, lower) : handmadeBrought(earned, lower));
  }

  private static String hotTook(boolean lower) {
    return lower ? "comparison.shows.hot.lessTime" : "comparison.shows.hot.moreTime";
  }

  private static String handmadeTook(boolean lower) {
    return lower ? "comparison.shows.handmade.lessTime" : "comparison.shows.handmade.moreTime";
  }

  private static String hotBrought(boolean earned, boolean lower) {
    if (earned) {
      return lower ? "comparison.shows.hot.earnedLess" : "comparison.shows.hot.earnedMore";
    }
    return lower ? "comparison.shows.hot.costLess" : "comparison.shows.hot.costMore";
  }

  private static String handmadeBrought(boolean earned, boolean lower) {
    if (earned) {
      return lower
          ? "comparison.shows.handmade.earnedLess"
          : "comparison.shows.handmade.earnedMore";
    }
    return lower ? "comparison.shows.handmade.costLess" : "comparison.shows.handmade.costMore";
  }

  private Message difference(Comparison comparison) {
    StratifiedEstimate found = comparison.estimate().orElseThrow();
    Interval wider = comparison.wider().orElseThrow();
    Measure measure = comparison.measure();
    boolean lower = comparison.verdict() == Verdict.A_LOWER;
    return compared(
        "comparison.shows",
        comparison,
        verb(comparison, lower),
        amounts.of(measure, Math.abs(found.difference())),
        mean(measure, found.meanA()),
        mean(measure, found.meanB()),
        amounts.of(measure, lower ? -wider.high() : wider.low()),
        amounts.of(measure, lower ? -wider.low() : wider.high()));
  }

  private String mean(Measure measure, double mean) {
    return amounts.number(mean, amounts.decimals(measure));
  }

  /** A picture's figures in a line. */
  String caption(Comparison comparison) {
    StratifiedEstimate found = comparison.estimate().orElseThrow();
    Question question = comparison.question();
    Measure measure = comparison.measure();
    String difference = mean(measure, found.difference());
    String meanA = mean(measure, found.meanA());
    String meanB = mean(measure, found.meanB());
    return comparison
        .wider()
        .map(
            each ->
                text.say(
                    WayTexts.by(
                        question, "comparison.dots.hot.likely", "comparison.dots.handmade.likely"),
                    difference,
                    mean(measure, each.low()),
                    mean(measure, each.high()),
                    meanA,
                    meanB))
        .orElseGet(
            () ->
                text.say(
                    WayTexts.by(
                        question, "comparison.dots.hot.same", "comparison.dots.handmade.same"),
                    difference,
                    meanA,
                    meanB));
  }

  private Message noDifference(Comparison comparison) {
    StratifiedEstimate found = comparison.estimate().orElseThrow();
    Interval wider = comparison.wider().orElseThrow();
    Measure measure = comparison.measure();
    Question question = comparison.question();
    return compared(
        WayTexts.by(question, "comparison.untold.hot", "comparison.untold.handmade"),
        comparison,
        mean(measure, found.meanA()),
        mean(measure, found.meanB()),
        amounts.of(measure, Math.abs(wider.low())),
        amounts.of(measure, Math.abs(wider.high())),
        MoreJobs.of(comparison).sentence(question));
  }

  private Message noVariance(Comparison comparison) {
    StratifiedEstimate found = comparison.estimate().orElseThrow();
    return compared(
        "comparison.same",
        comparison,
        amounts.of(comparison.measure(), Math.abs(found.difference())));
  }
}

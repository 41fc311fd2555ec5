package clenchbook.comparison;

import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Question;
import clenchbook.comparison.questions.Verdict;
import clenchbook.comparison.questions.Way;
import clenchbook.statistics.Interval;
import clenchbook.statistics.StratifiedEstimate;
import clenchbook.texts.Message;
import java.util.OptionalInt;

/**
 * How many more jobs it would take before an interval that holds zero leaves it, should they turn
 * out as those before.
 *
 * <p>The half-width of a confidence interval of a mean shrinks with the square root of the number
 * of jobs; so the jobs needed are those there are, times the square of half-width by difference.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 7.2.2.2 (from memory). It is an
 * order of magnitude, not a promise: the next jobs may differ.
 *
 * @param jobs more jobs of the side that has fewer; empty where more than ten times the jobs there
 *     are would be needed, or none at all
 * @param wanted false where the interval leaves zero already
 * @param smallerIsA whether side A has fewer jobs
 */
record MoreJobs(OptionalInt jobs, boolean wanted, boolean smallerIsA) {
  private static final int MOST_TIMES = 10;

  static MoreJobs of(Comparison comparison) {
    int countA = comparison.estimate().map(StratifiedEstimate::countA).orElse(0);
    int countB = comparison.estimate().map(StratifiedEstimate::countB).orElse(0);
    boolean smallerIsA = countA <= countB;
    int count = Math.min(countA, countB);
    if (!comparison.enough()) {
      return new MoreJobs(OptionalInt.of(Math.max(1, Verdict.FEWEST - count)), true, smallerIsA);
    }
    if (comparison.wider().isEmpty()) {
      return new MoreJobs(OptionalInt.empty(), false, smallerIsA);
    }
    double difference = comparison.estimate().orElseThrow().difference();
    return of(difference, comparison.wider().get(), count, smallerIsA);
  }

  /** The same for any figure with an interval that rests on so many jobs. */
  static MoreJobs of(double value, Interval interval, int count, boolean smallerIsA) {
    if (!interval.holds(0)) {
      return new MoreJobs(OptionalInt.empty(), false, smallerIsA);
    }
    double half = Math.max(value - interval.low(), interval.high() - value);
    double times = Math.pow(half / Math.abs(value), 2);
    boolean within = times - 1 <= MOST_TIMES;
    return new MoreJobs(
        within
            ? OptionalInt.of((int) Math.max(1, Math.ceil(count * (times - 1))))
            : OptionalInt.empty(),
        true,
        smallerIsA);
  }

  /** The number as files have it; empty for none. */
  String filed() {
    return jobs.isPresent() ? String.valueOf(jobs.getAsInt()) : "";
  }

  /** What it would take, within a sentence. */
  Message words(Question question) {
    return jobs.isPresent()
        ? WayTexts.moreWouldTell(smaller(question), jobs.getAsInt())
        : Message.of("comparison.more.none");
  }

  /** The same as a sentence. */
  Message sentence(Question question) {
    return jobs.isPresent()
        ? WayTexts.moreWouldTellSentence(smaller(question), jobs.getAsInt())
        : Message.of("comparison.more.none.sentence");
  }

  private Way smaller(Question question) {
    return smallerIsA ? question.a() : question.b();
  }
}

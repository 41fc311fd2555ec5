package clenchbook.comparison;

import clenchbook.comparison.statistics.Side;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One measure in one month.
 *
 * @param question the question
 * @param measure the measure
 * @param month the month
 * @param countA jobs of side A that entered
 * @param countB jobs of side B that entered
 * @param meanA their plain mean; empty without jobs
 * @param meanB the same of side B
 * @param difference the difference like with like; empty where the month alone can't give it
 */
public record Trend(
    Question question,
    Measure measure,
    YearMonth month,
    int countA,
    int countB,
    OptionalDouble meanA,
    OptionalDouble meanB,
    Optional<Double> difference) {

  /** All months from one day to another, questions and measures in their order. */
  static List<Trend> of(List<ComparedJob> jobs, LocalDate from, LocalDate to, CompareRates rates) {
    List<Trend> trends = new ArrayList<>();
    for (Question question : Question.values()) {
      for (Measure measure : Measure.values()) {
        for (YearMonth month : months(from, to)) {
          List<ComparedJob> own =
              jobs.stream().filter(job -> YearMonth.from(job.date()).equals(month)).toList();
          trends.add(month(Comparison.withoutGuard(question, measure, own, rates), month));
        }
      }
    }
    return trends;
  }

  private static List<YearMonth> months(LocalDate from, LocalDate to) {
    return YearMonth.from(from)
        .atDay(1)
        .datesUntil(to.plusDays(1), java.time.Period.ofMonths(1))
        .map(YearMonth::from)
        .toList();
  }

  private static Trend month(Comparison comparison, YearMonth month) {
    return new Trend(
        comparison.question(),
        comparison.measure(),
        month,
        (int) comparison.entered().stream().filter(each -> each.side() == Side.A).count(),
        (int) comparison.entered().stream().filter(each -> each.side() == Side.B).count(),
        mean(comparison, Side.A),
        mean(comparison, Side.B),
        comparison.estimate().map(found -> found.difference()));
  }

  private static OptionalDouble mean(Comparison comparison, Side side) {
    return comparison.entered().stream()
        .filter(each -> each.side() == side)
        .mapToDouble(Comparison.Entry::value)
        .average();
  }
}

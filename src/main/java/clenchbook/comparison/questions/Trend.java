package clenchbook.comparison.questions;

import clenchbook.statistics.Side;
import clenchbook.statistics.StratifiedDifference;
import java.time.LocalDate;
import java.time.Period;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

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
    OptionalDouble difference) {

  /** All months from one day to another, questions and measures in their order. */
  public static List<Trend> of(List<Comparison> comparisons, LocalDate from, LocalDate to) {
    List<YearMonth> months =
        YearMonth.from(from)
            .atDay(1)
            .datesUntil(to.plusDays(1), Period.ofMonths(1))
            .map(YearMonth::from)
            .toList();
    List<Trend> trends = new ArrayList<>();
    for (Comparison comparison : comparisons) {
      Map<YearMonth, List<Comparison.Entry>> byMonth =
          comparison.entered().stream()
              .collect(Collectors.groupingBy(entry -> YearMonth.from(entry.job().date())));
      for (YearMonth month : months) {
        trends.add(month(comparison, month, byMonth.getOrDefault(month, List.of())));
      }
    }
    return trends;
  }

  private static Trend month(
      Comparison comparison, YearMonth month, List<Comparison.Entry> entries) {
    OptionalDouble difference =
        StratifiedDifference.difference(
            entries.stream().map(Comparison.Entry::observation).toList());
    return new Trend(
        comparison.question(),
        comparison.measure(),
        month,
        (int) entries.stream().filter(each -> each.side() == Side.A).count(),
        (int) entries.stream().filter(each -> each.side() == Side.B).count(),
        mean(entries, Side.A),
        mean(entries, Side.B),
        difference);
  }

  private static OptionalDouble mean(List<Comparison.Entry> entries, Side side) {
    return entries.stream()
        .filter(each -> each.side() == side)
        .mapToDouble(Comparison.Entry::value)
        .average();
  }
}

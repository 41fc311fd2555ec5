package clenchbook.comparison;

import clenchbook.book.MaterialKind;
import clenchbook.book.Shaping;
import clenchbook.comparison.breakeven.BreakEven;
import clenchbook.comparison.breakeven.ForgeBreakEven;
import clenchbook.comparison.breakeven.HandmadeBreakEven;
import clenchbook.comparison.breakeven.Sensitivity;
import clenchbook.comparison.lostshoes.LostShoes;
import clenchbook.comparison.pricing.Pricing;
import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.ComparedJob;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.comparison.questions.SortedJob;
import clenchbook.comparison.questions.Trend;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.Report;
import clenchbook.statistics.Interval;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Everything that a period's jobs say about hot with cold, handmade with keg and the price to ask.
 *
 * @param from first day of the period, inclusive
 * @param to last day, inclusive
 * @param rates the settings it rests on
 * @param comparisons each question with each measure, in their order
 * @param lostShoes the shoes found lost, by method
 * @param breakEvens the break-even figures, in order
 * @param curve what lighting the forge brings, by shoes at the stop; empty where unknown
 * @param stopShoes hot shoes at the book's average hot stop, rounded; 0 without one
 * @param sensitivities how the figures move when one input moves
 * @param trends each measure by month
 * @param pricing prices and callbacks
 */
public record Comparisons(
    LocalDate from,
    LocalDate to,
    CompareRates rates,
    List<Comparison> comparisons,
    LostShoes lostShoes,
    List<BreakEven> breakEvens,
    List<ForgeBreakEven.CurvePoint> curve,
    int stopShoes,
    List<Sensitivity> sensitivities,
    List<Trend> trends,
    Pricing pricing) {

  /** Copies the lists. */
  public Comparisons {
    comparisons = List.copyOf(comparisons);
    breakEvens = List.copyOf(breakEvens);
    curve = List.copyOf(curve);
    sensitivities = List.copyOf(sensitivities);
    trends = List.copyOf(trends);
  }

  /**
   * Shape minutes that a hot shoe saves against a cold one.
   *
   * @param minutes minutes a shoe; below 0 where hot takes longer
   * @param interval the wider 95 % interval; empty without variance
   */
  public record Saved(double minutes, Optional<Interval> interval) {}

  /**
   * Asks all questions of a period.
   *
   * @param jobs all of the book's jobs, in {@link ComparedJob#ORDER}; earlier ones tell which shoes
   *     were on
   * @param from first day of the period, inclusive
   * @param to last day, inclusive
   */
  public static Comparisons of(
      List<ComparedJob> jobs, LocalDate from, LocalDate to, CompareRates rates) {
    List<ComparedJob> done =
        jobs.stream()
            .filter(job -> !job.date().isBefore(from) && !job.date().isAfter(to) && job.done())
            .toList();
    List<Comparison> comparisons = new ArrayList<>();
    for (Question question : Question.values()) {
      List<SortedJob> sorted = SortedJob.of(question, done);
      for (Measure measure : Measure.values()) {
        comparisons.add(Comparison.of(question, measure, sorted, rates));
      }
    }
    ForgeBreakEven forge =
        ForgeBreakEven.of(
            find(comparisons, Question.HOT_WITH_COLD, Measure.SHAPE_MINUTES_PER_SHOE), done, rates);
    HandmadeBreakEven handmade =
        HandmadeBreakEven.of(
            find(comparisons, Question.HANDMADE_WITH_KEG, Measure.EARNED_PER_HOUR));
    ForgeBreakEven.Answer lit = forge.answer();
    List<BreakEven> breakEvens = new ArrayList<>(List.of(lit.figure()));
    breakEvens.addAll(handmade.figures());
    int stopShoes = stopShoes(done);
    return new Comparisons(
        from,
        to,
        rates,
        comparisons,
        LostShoes.of(jobs, from, to),
        breakEvens,
        lit.curve(),
        stopShoes,
        Sensitivity.of(forge, handmade, stopShoes),
        Trend.of(comparisons, from, to),
        Pricing.of(jobs, from, to, rates));
  }

  /** Hot steel shoes a stop, over the stops that had any. */
  private static int stopShoes(List<ComparedJob> done) {
    Map<String, Integer> byStop =
        done.stream()
            .filter(job -> job.shaped(Shaping.HOT) && !job.has(MaterialKind.ALUMINIUM))
            .filter(job -> job.shoes() > 0)
            .collect(
                Collectors.groupingBy(
                    ComparedJob::stop, Collectors.summingInt(ComparedJob::shoes)));
    return (int)
        Math.round(byStop.values().stream().mapToInt(Integer::intValue).average().orElse(0));
  }

  private static Comparison find(List<Comparison> comparisons, Question question, Measure measure) {
    return comparisons.stream()
        .filter(each -> each.question() == question && each.measure() == measure)
        .findFirst()
        .orElseThrow();
  }

  /** The comparison of one question and measure. */
  public Comparison comparison(Question question, Measure measure) {
    return find(comparisons, question, measure);
  }

  /** The break-even figure of this name. */
  public BreakEven breakEven(String quantity) {
    return breakEvens.stream()
        .filter(each -> each.quantity().equals(quantity))
        .findFirst()
        .orElseThrow();
  }

  /** Shape minutes that a hot shoe saves; empty where there are not enough jobs. */
  public Optional<Saved> shapeMinutesSavedPerShoe() {
    Comparison shape = comparison(Question.HOT_WITH_COLD, Measure.SHAPE_MINUTES_PER_SHOE);
    return shape
        .estimate()
        .filter(found -> shape.enough())
        .map(
            found ->
                new Saved(
                    0 - found.difference(),
                    shape.wider().map(each -> new Interval(0 - each.high(), 0 - each.low()))));
  }

  /** All figures, for files. */
  public List<FigureTable> tables() {
    return ComparisonTables.of(this);
  }

  /**
   * The whole report, {@code comparisons}.
   *
   * @param business the business's name; empty for none
   */
  public Report report(String business) {
    return ComparisonsReport.of(this, business);
  }
}

package clenchbook.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Book;
import clenchbook.book.Shaping;
import clenchbook.comparison.questions.ComparedJobs;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.comparison.questions.Verdict;
import clenchbook.costing.JobCost;
import clenchbook.costing.JobCosts;
import clenchbook.jobs.JobResolver;
import clenchbook.jobs.Jobs;
import clenchbook.reading.BookReader;
import clenchbook.reading.ReadOptions;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Directions on the sample books, as farriers expect them (common practice, no source): cold takes
 * longer a shoe than hot, handmade longer than keg, shoes fitted hot are lost less often, cold
 * needs less set-up.
 */
@Tag("samples")
class SampleBooksTest {

  private record Sample(List<JobCost> costs, Comparisons compared, Book book) {}

  private static Sample sample(String name) throws IOException {
    Book book =
        BookReader.read(Path.of("sample-workbooks", name), ReadOptions.of(Locale.UK)).book();
    Jobs jobs = JobResolver.resolve(book);
    LocalDate last = jobs.all().get(jobs.all().size() - 1).date();
    JobCosts costs = JobCosts.of(jobs, last);
    Comparisons compared =
        Comparisons.of(
            ComparedJobs.of(jobs, costs),
            jobs.all().get(0).date(),
            last,
            ComparedJobs.rates(book.settings()));
    return new Sample(costs.all(), compared, book);
  }

  @ParameterizedTest
  @ValueSource(strings = {"thornfield-metric.xlsx", "cedar-hollow-imperial.xlsx"})
  void the_directions_are_those_of_the_trade(String name) throws IOException {
    Sample sample = sample(name);
    Comparison shape =
        sample.compared().comparison(Question.HOT_WITH_COLD, Measure.SHAPE_MINUTES_PER_SHOE);
    assertEquals(Verdict.A_LOWER, shape.verdict());
    Comparison handmade =
        sample.compared().comparison(Question.HANDMADE_WITH_KEG, Measure.JOB_MINUTES);
    assertTrue(handmade.estimate().orElseThrow().difference() > 0);
    assertTrue(sample.compared().lostShoes().difference().orElseThrow() < 0);
    assertTrue(setup(sample, job -> hot(job)).signum() > 0);
    assertEquals(0, setup(sample, job -> !hot(job)).signum());
  }

  private static boolean hot(JobCost cost) {
    return cost.job().shaping().filter(Shaping.HOT::equals).isPresent();
  }

  private static BigDecimal setup(Sample sample, Predicate<JobCost> which) {
    return sample.costs().stream()
        .filter(which)
        .map(JobCost::setupMinutes)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  @ParameterizedTest
  @ValueSource(strings = {"thornfield-metric.xlsx", "cedar-hollow-imperial.xlsx"})
  void what_was_charged_and_left_adds_up_with_the_jobs(String name) throws IOException {
    Sample sample = sample(name);
    BigDecimal charged =
        sample.costs().stream().map(JobCost::chargeNet).reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal left =
        sample.costs().stream()
            .map(JobCost::marginAfterLabour)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertEquals(0, charged.compareTo(sum(sample, each -> each.charged())));
    assertEquals(0, left.compareTo(sum(sample, each -> each.margin())));
  }

  private static BigDecimal sum(
      Sample sample,
      java.util.function.Function<clenchbook.comparison.pricing.WorkPrice, BigDecimal> what) {
    return sample.compared().pricing().works().stream()
        .map(what)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}

package clenchbook.workload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Book;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.Trip;
import clenchbook.comparison.Comparisons;
import clenchbook.comparison.questions.ComparedJobs;
import clenchbook.costing.JobCost;
import clenchbook.costing.JobCosts;
import clenchbook.jobs.Job;
import clenchbook.jobs.JobResolver;
import clenchbook.jobs.Jobs;
import clenchbook.reading.BookReader;
import clenchbook.reading.ReadOptions;
import clenchbook.reading.rates.RateFiles;
import clenchbook.reports.blocks.Block;
import clenchbook.tax.Jurisdictions;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.YearStart;
import clenchbook.workload.hours.FigurePeriod;
import clenchbook.workload.hours.HoursMeasure;
import clenchbook.workload.hours.JobShoes;
import clenchbook.workload.outlook.ShapeDifference;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The sample books: the hours agree with what the costing charges, and the sums with their parts.
 */
@Tag("samples")
class SampleBooksWorkloadTest {

  private static final LocalDate DAY = LocalDate.of(2026, 10, 31);

  private record Sample(Book book, Jobs jobs, LocalDate start, Optional<ShapeDifference> shape) {

    static Sample of(String name) throws IOException {
      Book book =
          BookReader.read(Path.of("sample-workbooks", name), ReadOptions.of(Locale.UK)).book();
      Jobs jobs = JobResolver.resolve(book);
      Comparisons compared =
          Comparisons.of(
              ComparedJobs.of(jobs, JobCosts.of(jobs, DAY)),
              DAY.minusYears(1).plusDays(1),
              DAY,
              ComparedJobs.rates(book.settings()));
      return new Sample(book, jobs, yearStart(book.settings()), ShapeDifference.of(compared));
    }

    private static LocalDate yearStart(Settings settings) {
      Regime regime = Jurisdictions.find(settings.text(Setting.TAX_REGIME)).orElseThrow().regime();
      return YearStart.of(regime, settings, RateFiles.bundled()).holding(DAY);
    }

    WorkloadFindings findings(List<Job> inOrder) {
      return Workload.of(book, inOrder, start, DAY, shape);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"thornfield-metric.xlsx", "cedar-hollow-imperial.xlsx"})
  void hours_in_all_are_what_the_costing_charges_and_the_trips_between(String name)
      throws IOException {
    Sample sample = Sample.of(name);
    BigDecimal charged =
        JobCosts.of(sample.jobs(), DAY).all().stream()
            .filter(cost -> inYear(sample, cost.job().date()))
            .map(JobCost::ownMinutes)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    double expected = (charged.doubleValue() + minutesBetween(sample)) / 60;
    Figures figures = Figures.of(sample.findings(sample.jobs().all()).figures());
    assertEquals(expected, number(figures, "2026", "hours in all"), 0.006);
  }

  /** Business trips on days without a visit that was not cancelled. */
  private static double minutesBetween(Sample sample) {
    Set<LocalDate> visited =
        sample.jobs().all().stream()
            .filter(job -> !job.cancelled())
            .map(Job::date)
            .collect(Collectors.toSet());
    return sample.book().trips().stream()
        .filter(Trip::business)
        .filter(trip -> inYear(sample, trip.date()) && !visited.contains(trip.date()))
        .mapToDouble(trip -> trip.driveMin().map(BigDecimal::doubleValue).orElse(0.0))
        .sum();
  }

  private static boolean inYear(Sample sample, LocalDate day) {
    return !day.isBefore(sample.start()) && !day.isAfter(DAY);
  }

  @ParameterizedTest
  @ValueSource(strings = {"thornfield-metric.xlsx", "cedar-hollow-imperial.xlsx"})
  void every_period_is_the_sum_of_its_activities(String name) throws IOException {
    Sample sample = Sample.of(name);
    Figures figures = Figures.of(sample.findings(sample.jobs().all()).figures());
    for (FigurePeriod month : FigurePeriod.year(sample.start(), DAY).months()) {
      double sum = 0;
      for (HoursMeasure measure : HoursMeasure.values()) {
        sum +=
            measure == HoursMeasure.IN_ALL ? 0 : number(figures, month.name(), measure.measure());
      }
      assertEquals(number(figures, month.name(), "hours in all"), sum, 0.04);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"thornfield-metric.xlsx", "cedar-hollow-imperial.xlsx"})
  void the_order_of_the_jobs_changes_nothing(String name) throws IOException {
    Sample sample = Sample.of(name);
    List<Job> shuffled = new ArrayList<>(sample.jobs().all());
    Collections.shuffle(shuffled, new Random(7));
    WorkloadFindings inOrder = sample.findings(sample.jobs().all());
    assertEquals(inOrder.figures(), sample.findings(shuffled).figures());
    assertEquals(inOrder.report(), sample.findings(shuffled).report());
  }

  @ParameterizedTest
  @ValueSource(strings = {"thornfield-metric.xlsx", "cedar-hollow-imperial.xlsx"})
  void hot_shaping_is_tied_to_the_comparison(String name) throws IOException {
    Sample sample = Sample.of(name);
    ShapeDifference shape = sample.shape().orElseThrow();
    assertTrue(shape.minutesPerShoe() < 0);
    double hotShoes =
        sample.jobs().between(DAY.minusYears(1).plusDays(1), DAY).stream()
            .filter(job -> !job.cancelled() && job.hot())
            .mapToDouble(job -> JobShoes.of(job, 0).hotSteel())
            .sum();
    Figures figures = Figures.of(sample.findings(sample.jobs().all()).figures());
    assertEquals(
        shape.minutesPerShoe() * hotShoes,
        number(figures, "2026", OutlookFigures.HOT_SHAPING),
        0.5);
  }

  @ParameterizedTest
  @ValueSource(strings = {"thornfield-metric.xlsx", "cedar-hollow-imperial.xlsx"})
  void every_number_in_a_table_of_the_report_stands_in_the_figures(String name) throws IOException {
    Sample sample = Sample.of(name);
    WorkloadFindings findings = sample.findings(sample.jobs().all());
    Set<BigDecimal> known =
        findings.figures().rows().stream()
            .flatMap(row -> List.of(row.get(2), row.get(4), row.get(7), row.get(8)).stream())
            .filter(text -> !text.isEmpty())
            .map(text -> new BigDecimal(text).stripTrailingZeros())
            .collect(Collectors.toSet());
    for (Block block : findings.report().blocks()) {
      if (block instanceof Block.Table table) {
        assertKnown(table, known);
      }
    }
  }

  private static void assertKnown(Block.Table table, Set<BigDecimal> known) {
    for (int column = 0; column < table.columns().size(); column++) {
      Block.Column heading = table.columns().get(column);
      if (heading.number() && !heading.header().equals("Trunk, degrees")) {
        for (Block.Row row : table.rows()) {
          String text = row.cells().get(column).text();
          assertTrue(text.isEmpty() || isKnown(text, known), table.caption() + ": " + row);
        }
      }
    }
  }

  /** Hours are printed as hours and minutes, from a hundred up as hours; both from the file's. */
  private static boolean isKnown(String text, Set<BigDecimal> known) {
    String plain = text.replace(",", "").replace('\u00A0', ' ').replace('\u2212', '-');
    Matcher hours = Pattern.compile("(?:(\\d+) h)? ?(?:(\\d+)(?: min)?)?").matcher(plain);
    if (!plain.matches(".* (h|min|h \\d\\d)") || !hours.matches()) {
      return known.contains(new BigDecimal(plain).stripTrailingZeros());
    }
    BigDecimal whole = new BigDecimal(Optional.ofNullable(hours.group(1)).orElse("0"));
    BigDecimal minutes = new BigDecimal(Optional.ofNullable(hours.group(2)).orElse("0"));
    BigDecimal printed = whole.multiply(BigDecimal.valueOf(60)).add(minutes);
    return known.stream()
        .map(each -> each.multiply(BigDecimal.valueOf(60)))
        .anyMatch(
            each ->
                each.setScale(0, RoundingMode.HALF_UP).compareTo(printed) == 0
                    || (whole.intValue() >= 100
                        && each.subtract(printed).abs().compareTo(BigDecimal.valueOf(30)) <= 0));
  }

  private static double number(Figures figures, String period, String measure) {
    return Double.parseDouble(figures.value(period, measure));
  }
}

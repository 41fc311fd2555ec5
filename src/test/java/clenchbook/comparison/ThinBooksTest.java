package clenchbook.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Reason;
import clenchbook.book.Shaping;
import clenchbook.comparison.breakeven.BreakEvenTest;
import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.ComparedJob;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.reading.texts.TextFiles;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.Report;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Books that can't answer: each gives a sentence, never a fault, never a number that pretends. */
class ThinBooksTest {

  private static Comparisons compare(List<ComparedJob> jobs) {
    return Comparisons.of(jobs, JobMaker.FIRST, JobMaker.LAST, JobMaker.rates());
  }

  private static String words(Comparisons all) {
    StringBuilder words = new StringBuilder();
    for (Block block : blocks(all.report(""))) {
      if (block instanceof Block.Paragraph paragraph) {
        words.append(paragraph.text()).append('\n');
      }
    }
    assertFalse(words.toString().contains("NaN"), words.toString());
    assertFalse(words.toString().contains("Infinity"), words.toString());
    for (FigureTable table : all.tables()) {
      assertFalse(table.rows().toString().contains("NaN"), table.name());
      assertFalse(table.rows().toString().contains("Infinity"), table.name());
    }
    return words.toString();
  }

  private static List<Block> blocks(Report report) {
    return report.files().stream().flatMap(file -> file.blocks().stream()).toList();
  }

  private static void assertSays(Comparisons all, String text) {
    assertTrue(words(all).contains(text), words(all));
  }

  private static List<ComparedJob> hot(int count, String horse) {
    List<ComparedJob> jobs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      jobs.add(
          JobMaker.job().row(2 + i).horse(horse + i % 7).hot(String.valueOf(20 + i % 5)).make());
    }
    return jobs;
  }

  private static List<ComparedJob> cold(int count, String horse) {
    List<ComparedJob> jobs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      jobs.add(
          JobMaker.job().row(90 + i).horse(horse + i % 7).cold(String.valueOf(28 + i % 6)).make());
    }
    return jobs;
  }

  private static List<ComparedJob> both(List<ComparedJob> one, List<ComparedJob> other) {
    List<ComparedJob> jobs = new ArrayList<>(one);
    jobs.addAll(other);
    return jobs;
  }

  @Test
  void an_empty_book() {
    Comparisons empty = compare(List.of());
    assertSays(empty, "no job of this period can be used");
    assertSays(empty, "There is no work in this period to price.");
    assertTrue(empty.shapeMinutesSavedPerShoe().isEmpty());
    assertTrue(empty.report("").first().isPresent());
  }

  @Test
  void all_hot() {
    assertSays(compare(hot(12, "a")), "all 12 usable jobs were hot, so there is nothing cold");
  }

  @Test
  void all_cold() {
    assertSays(compare(cold(12, "a")), "all 12 usable jobs were cold, so there is nothing hot");
  }

  @Test
  void too_few_on_a_side() {
    Comparisons few = compare(both(hot(4, "a"), cold(9, "b")));
    assertSays(few, "only 4 hot and 9 cold jobs can be compared like with like");
    assertEquals("not enough jobs", BreakEvenTest.table(few, "comparisons", 0, "verdict"));
  }

  @Test
  void nothing_done_both_ways() {
    List<ComparedJob> other = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      JobMaker front = JobMaker.job().row(50 + i).horse("f" + i).cold("15");
      front.work = "Fronts";
      front.shoes = 2;
      other.add(front.make());
    }
    assertSays(
        compare(both(hot(6, "a"), other)), "no sort of job was done at least twice both ways");
  }

  @Test
  void one_horse_only_gives_no_interval_by_horses() {
    List<ComparedJob> jobs = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      jobs.add(JobMaker.job().row(2 + i).hot("2" + i).make());
      jobs.add(JobMaker.job().row(30 + i).cold("3" + i).make());
    }
    Comparisons one = compare(jobs);
    assertSays(one, "one horse only");
    assertEquals("", BreakEvenTest.table(one, "comparisons", 0, "low_horse"));
    assertFalse(BreakEvenTest.table(one, "comparisons", 0, "low").isEmpty());
  }

  @Test
  void no_variance_gives_a_difference_without_an_interval() {
    List<ComparedJob> jobs = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      jobs.add(JobMaker.job().row(2 + i).horse("a" + i).hot("20").make());
      jobs.add(JobMaker.job().row(30 + i).horse("b" + i).cold("28").make());
    }
    Comparisons still = compare(jobs);
    assertSays(still, "every job of a sort has the very same figure");
    assertEquals("-2", BreakEvenTest.table(still, "comparisons", 0, "difference"));
    assertEquals("", BreakEvenTest.table(still, "comparisons", 0, "low"));
    assertEquals("no difference shown", BreakEvenTest.table(still, "comparisons", 0, "verdict"));
  }

  @Test
  void negative_margins_are_compared_like_any_other() {
    List<ComparedJob> jobs = new ArrayList<>();
    for (ComparedJob job : both(hot(10, "a"), cold(10, "b"))) {
      JobMaker poor = JobMaker.job().horse(job.horse()).row(job.source().row());
      poor.shaping = job.shaping();
      poor.charged = String.valueOf(10 + job.source().row() % 4);
      jobs.add(poor.make());
    }
    Comparisons poor = compare(jobs);
    String mean =
        BreakEvenTest.table(poor, "comparisons", rowOf(poor, "earned per hour"), "mean_a");
    assertTrue(Double.parseDouble(mean) < 0, mean);
    assertSays(poor, "Full set loses money: 20 jobs leave −£");
  }

  private static int rowOf(Comparisons all, String measure) {
    List<List<String>> rows = all.tables().get(0).rows();
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).get(1).equals(measure) && rows.get(i).get(2).equals("all")) {
        return i;
      }
    }
    throw new AssertionError(measure);
  }

  @Test
  void no_wage_and_no_gas_cost_are_said() {
    CompareRates bare =
        new CompareRates(
            "EUR",
            new FigureText(TextFiles.in("en", "IE"), "EUR"),
            new MinorUnit(2),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            BigDecimal.valueOf(5),
            BigDecimal.valueOf(5),
            false,
            14,
            Optional.empty());
    Comparisons all =
        Comparisons.of(both(hot(12, "a"), cold(12, "b")), JobMaker.FIRST, JobMaker.LAST, bare);
    assertSays(all, "it never pays");
    assertSays(all, "No hourly wage is given");
    assertSays(all, "time costs nothing here, so these prices are too low");
  }

  @Test
  void cancelled_visits_and_fees_are_not_looked_at() {
    List<ComparedJob> jobs = new ArrayList<>(hot(12, "a"));
    JobMaker cancelled = JobMaker.job();
    cancelled.reason = Reason.CANCELLED;
    JobMaker fee = JobMaker.job();
    fee.fee = true;
    fee.shoes = 0;
    fee.shaping = Optional.of(Shaping.NONE);
    jobs.add(cancelled.make());
    jobs.add(fee.make());
    assertEquals("12", BreakEvenTest.table(compare(jobs), "comparison-use", 0, "of_jobs"));
  }

  @Test
  void two_ways_that_disagree_are_said_to() {
    List<ComparedJob> jobs = new ArrayList<>();
    int row = 2;
    for (int horse = 0; horse < 8; horse++) {
      boolean hard = horse < 4;
      for (int i = 0; i < 6; i++) {
        boolean hot = hard ? i > 0 : i == 0;
        String shape = String.valueOf((hard ? 44 : 24) + (hot ? -3 : 0) + row % 3);
        JobMaker job = JobMaker.job().row(row++).horse("horse " + horse);
        jobs.add((hot ? job.hot(shape) : job.cold(shape)).make());
      }
    }
    Comparisons all = compare(jobs);
    Comparison shape = all.comparison(Question.HOT_WITH_COLD, Measure.SHAPE_MINUTES_PER_SHOE);
    assertEquals(Comparison.Agreement.OTHER_SIGN, shape.agreement());
    assertSays(all, "the two ways of reckoning do not agree");
  }

  @Test
  void every_job_is_either_used_or_left_out_with_a_reason() {
    Comparisons all = compare(JobMaker.book(3));
    for (Comparison each : all.comparisons()) {
      int out = each.leftOut().values().stream().mapToInt(Integer::intValue).sum();
      assertEquals(each.jobs(), each.used().size() + out);
    }
  }

  @Test
  void a_full_report_has_words_pictures_and_the_strata() {
    Report report = compare(JobMaker.book(3)).report("Test Forge");
    assertEquals("comparisons", report.name());
    assertTrue(report.blocks().stream().anyMatch(each -> each instanceof Block.Caution));
    assertTrue(blocks(report).stream().filter(each -> each instanceof Block.Picture).count() >= 10);
  }

  /**
   * Numbers with decimals in words and tables, rounded for people, each from a figure in a file.
   */
  @Test
  void every_number_that_people_read_stands_in_a_file() {
    for (long seed : List.of(3L, 8L)) {
      Comparisons all = compare(JobMaker.book(seed));
      Set<String> files = new TreeSet<>();
      for (FigureTable table : all.tables()) {
        table.rows().forEach(row -> row.forEach(cell -> addRounded(files, cell)));
      }
      for (String text : printed(all.report(""))) {
        Matcher number = Pattern.compile("[0-9]+[.][0-9]+").matcher(text.replace(",", ""));
        while (number.find()) {
          boolean wage = text.contains("hourly wage of £" + number.group());
          assertTrue(wage || files.contains(number.group()), number.group() + " in " + text);
        }
      }
    }
  }

  private static void addRounded(Set<String> files, String cell) {
    if (cell.matches("-?[0-9]+([.][0-9]+)?")) {
      for (int decimals = 1; decimals <= 2; decimals++) {
        files.add(
            new BigDecimal(cell).abs().setScale(decimals, RoundingMode.HALF_UP).toPlainString());
      }
    }
  }

  private static List<String> printed(Report report) {
    List<String> texts = new ArrayList<>();
    for (Block block : report.blocks()) {
      if (block instanceof Block.Paragraph paragraph) {
        texts.add(paragraph.text());
      } else if (block instanceof Block.KeyFigures figures) {
        figures.figures().forEach(figure -> texts.add(figure.value()));
      } else if (block instanceof Block.Picture picture) {
        texts.add(picture.inWords());
      } else if (block instanceof Block.Table table) {
        table.rows().forEach(row -> row.cells().forEach(cell -> texts.add(cell.text())));
      }
    }
    return texts;
  }
}

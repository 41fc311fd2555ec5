package clenchbook.workload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class HonestPageTest {

  private static final LocalDate START = LocalDate.of(2026, 1, 1);
  private static final LocalDate OCTOBER = LocalDate.of(2026, 10, 31);

  private static WorkloadFindings of(WrittenBook book) {
    return Workload.of(book.book(), book.jobs().all(), START, OCTOBER, Optional.empty());
  }

  @Test
  void a_book_without_minutes_gives_an_honest_mostly_empty_page() {
    WrittenBook book =
        new WrittenBook()
            .visit("Date: 2026-10-05, Place: Oak, Owner: Ash, Horse: Bess, Work: trim");
    WorkloadFindings findings = of(book);
    assertTrue(words(findings.report().blocks()).contains("No minutes are known"));
    assertTrue(words(findings.report().blocks()).contains("Effort CR10"));
    assertTrue(words(findings.report().blocks()).contains("No limits are set"));
    Figures figures = Figures.of(findings.figures());
    assertEquals("0.00", figures.value("2026", "hours in all"));
    assertEquals("none", figures.cell("2026", "hours in all", "basis"));
    assertEquals("1", figures.value("2026", "horses"));
    assertEquals("1", figures.value("2026", "days worked"));
    assertEquals("", figures.value("2026", "blows"));
    assertTrue(figures.cell("2026", "Revised Strain Index", "basis").startsWith("not computed"));
    assertTrue(figures.cell("2026", "noise dose, NIOSH", "basis").startsWith("not computed"));
    assertTrue(figures.cell("2026", "hand-arm vibration A(8)", "basis").startsWith("not computed"));
    assertTrue(findings.warnings().isEmpty());
  }

  @Test
  void an_empty_book_gives_a_page_too() {
    WorkloadFindings findings = of(new WrittenBook());
    assertEquals("0", Figures.of(findings.figures()).value("2026", "days worked"));
    assertFalse(findings.report().blocks().isEmpty());
    assertFalse(findings.page().isEmpty());
  }

  @Test
  void the_caution_stands_at_the_foot_of_each_page() {
    String caution = of(new WrittenBook()).report().caution();
    assertTrue(caution.contains("not a medical opinion"));
    assertTrue(caution.contains("see a clinician or an occupational-health professional"));
    assertTrue(caution.contains("Local law on work exposure comes first"));
  }

  @Test
  void limits_passed_and_to_be_passed_warn_with_their_dates() {
    WrittenBook book =
        busy()
            .setting(Setting.WEEKLY_HOURS_LIMIT, "30")
            .setting(Setting.YEARLY_HOURS_LIMIT, "60")
            .setting(Setting.HORSES_PER_DAY_LIMIT, "1");
    List<String> warnings = of(book).warnings();
    // 52.5 x 365 / 304 = 63.03; 60 / 63.034 x 365 = 347.4, so day 348.
    assertEquals(
        List.of(
            "At this rate hours in all pass your yearly limit of 60 about 14 December and reach"
                + " 63\u00A0h\u00A002 by the year's end (hours to date pro rata by days).",
            "Your weekly limit of 30\u00A0h was passed in the week of 5 October (35\u00A0h).",
            "Your daily limit of 1 horse was passed on 5 October (2)."),
        warnings);
  }

  @Test
  void a_yearly_limit_passed_already_names_the_day() {
    WrittenBook book = busy().setting(Setting.YEARLY_HOURS_LIMIT, "50");
    assertEquals(
        List.of("Hours in all passed your yearly limit of 50 on 12 October."), of(book).warnings());
  }

  /** 35 hours in week 41, 17.5 on Monday of week 42. */
  private static WrittenBook busy() {
    return new WrittenBook()
        .visit("Date: 2026-10-05, Owner: Ash, Horse: Bess, Work: trim, Total min: 1050")
        .visit("Date: 2026-10-05, Owner: Ash, Horse: Captain, Work: trim, Total min: 0")
        .visit("Date: 2026-10-06, Owner: Ash, Horse: Bess, Work: trim, Total min: 1050")
        .visit("Date: 2026-10-12, Owner: Ash, Horse: Bess, Work: trim, Total min: 1050")
        .visit("Date: 2026-11-05, Owner: Ash, Horse: Bess, Work: trim, Total min: 600");
  }

  @Test
  void what_is_later_than_the_day_counts_nowhere() {
    Figures figures = Figures.of(of(busy()).figures());
    assertEquals("52.50", figures.value("2026", "hours in all"));
    assertFalse(figures.has("2026-11-05", "hours in all"));
  }

  @Test
  void a_rating_out_of_range_is_said_and_not_computed() {
    WrittenBook book =
        busy()
            .strain(
                "Task: trim, Effort CR10: 4, Efforts per min: 40, Seconds per effort: 3,"
                    + " Wrist deg: 0, Trunk deg: 70, Longest hold s: 40, Noise dBA: 150")
            .strain("Task: nail, Effort CR10: 4");
    Figures figures = Figures.of(of(book).figures());
    assertEquals(
        "not computed: 40 efforts of 3 s do not fit in a minute",
        figures.cell("2026", "Revised Strain Index, trim", "basis"));
    assertEquals(
        "not computed: Strain lacks Efforts per min, Seconds per effort, Wrist deg",
        figures.cell("2026", "Revised Strain Index, nail", "basis"));
    assertEquals(
        "not computed: 150 dBA is not above 0 and up to 140",
        figures.cell("2026", "noise dose, NIOSH", "basis"));
    assertTrue(
        figures
            .cell("2026", "bent-trunk holding time, trim", "basis")
            .startsWith("not computed: trunk 70 degrees is above 60"));
  }

  @Test
  void every_number_on_the_pages_stands_in_the_figures() {
    WrittenBook book =
        busy()
            .setting(Setting.BIRTH_YEAR, "1985")
            .setting(Setting.STOP_AGE, "60")
            .setting(Setting.YEARLY_HOURS_LIMIT, "60")
            .strain(
                "Task: trim, Effort CR10: 4, Efforts per min: 10, Seconds per effort: 2,"
                    + " Wrist deg: 10, Wrist direction: flexion, Trunk deg: 50, Longest hold s: 40,"
                    + " Noise dBA: 85, Blows per shoe: 3");
    WorkloadFindings findings = of(book);
    Set<String> known = new HashSet<>();
    findings.figures().rows().forEach(known::addAll);
    for (String text : figuresIn(findings.report().blocks())) {
      Matcher number = Pattern.compile("-?\\d+\\.\\d\\d").matcher(text);
      while (number.find()) {
        assertTrue(known.contains(number.group()), number.group() + " in: " + text);
      }
    }
  }

  @Test
  void the_order_of_the_rows_changes_nothing() {
    WrittenBook forth = busy();
    WrittenBook back =
        new WrittenBook()
            .visit("Date: 2026-10-12, Owner: Ash, Horse: Bess, Work: trim, Total min: 1050")
            .visit("Date: 2026-11-05, Owner: Ash, Horse: Bess, Work: trim, Total min: 600")
            .visit("Date: 2026-10-06, Owner: Ash, Horse: Bess, Work: trim, Total min: 1050")
            .visit("Date: 2026-10-05, Owner: Ash, Horse: Captain, Work: trim, Total min: 0")
            .visit("Date: 2026-10-05, Owner: Ash, Horse: Bess, Work: trim, Total min: 1050");
    assertEquals(of(forth).figures(), of(back).figures());
    assertEquals(of(forth).report(), of(back).report());
  }

  @Test
  void the_weeks_picture_has_a_column_per_week_and_a_pattern_per_task() {
    Chart.Columns weeks =
        of(busy()).report().blocks().stream()
            .filter(Block.Picture.class::isInstance)
            .map(block -> ((Block.Picture) block).chart())
            .filter(Chart.Columns.class::isInstance)
            .map(Chart.Columns.class::cast)
            .findFirst()
            .orElseThrow();
    assertEquals(44, weeks.categories().size());
    assertTrue(weeks.stacked());
    assertEquals(35, weeks.series().get(0).values().get(40), 1e-9);
  }

  private static String words(List<Block> blocks) {
    return String.join("\n", figuresIn(blocks));
  }

  private static List<String> figuresIn(List<Block> blocks) {
    List<String> texts = new ArrayList<>();
    for (Block block : blocks) {
      if (block instanceof Block.Paragraph paragraph) {
        texts.add(paragraph.text());
      } else if (block instanceof Block.Caution caution) {
        texts.add(caution.text());
      } else if (block instanceof Block.KeyFigures figures) {
        figures.figures().forEach(figure -> texts.add(figure.value()));
      } else if (block instanceof Block.Table table) {
        table.rows().forEach(row -> row.cells().forEach(cell -> texts.add(cell.text())));
      } else if (block instanceof Block.Picture picture) {
        texts.add(picture.inWords());
      }
    }
    return texts;
  }
}

package clenchbook.workload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.comparison.questions.Verdict;
import clenchbook.jobs.WrittenBook;
import clenchbook.workload.outlook.ShapeDifference;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Stop age, hot against cold and changed weeks, worked by hand on a small, even year. */
class OutlookTest {

  private static final Optional<ShapeDifference> HALF_A_MINUTE_QUICKER =
      Optional.of(
          new ShapeDifference(
              -0.5, OptionalDouble.of(-0.9), OptionalDouble.of(-0.1), Verdict.A_LOWER));

  /**
   * Every Tuesday of 52 weeks: one set hot (24 minutes), one cold (28), one aluminium (30), all on
   * one stop; two handmade shoes among the hot ones at 15 minutes each.
   */
  private static WrittenBook evenYear() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.FORGE_SETUP_MIN, "6")
            .setting(Setting.BIRTH_YEAR, "1980")
            .setting(Setting.STOP_AGE, "60")
            .setting(Setting.HORSES_PER_DAY_LIMIT, "2")
            .work("Work: hot set, Shoes: 4, Shaping: hot, Shape min: 24, Trim min: 20")
            .work("Work: cold set, Shoes: 4, Shaping: cold, Shape min: 28, Trim min: 20")
            .work("Work: light set, Shoes: 4, Shaping: cold, Shape min: 30, Trim min: 20")
            .material("Item: keg, Kind: keg, Unit cost: 5")
            .material("Item: forged, Kind: handmade, Unit cost: 0, Making min: 15")
            .material("Item: light, Kind: aluminium, Unit cost: 9")
            .strain("Task: shape hot, Blows per shoe: 80")
            .strain("Task: shape cold, Blows per shoe: 110")
            .strain("Task: make, Blows per shoe: 400");
    LocalDate day = LocalDate.of(2026, 1, 6);
    for (int week = 0; week < 52; week++, day = day.plusDays(7)) {
      String head = "Date: " + day + ", Place: Yard, Owner: Ash, ";
      book.visit(head + "Horse: Bess, Work: hot set, Shoe: forged: 2; keg: 2")
          .visit(head + "Horse: Captain, Work: cold set, Shoe: keg")
          .visit(head + "Horse: Dora, Work: light set, Shoe: light");
    }
    return book;
  }

  private static final Figures YEAR = Figures.of(evenYear(), "2026-12-31", HALF_A_MINUTE_QUICKER);

  @Test
  void a_gain_is_told_only_where_its_interval_leaves_none_but_gains() {
    assertTrue(
        annex(-0.9, -0.1, Verdict.A_LOWER).contains("hot shaping takes 0.50 minutes a shoe less"));
    String open = annex(-0.9, 0.3, Verdict.NO_DIFFERENCE_SHOWN);
    assertFalse(open.contains("a shoe less"), open);
    assertTrue(open.contains("The book can't tell yet whether hot shaping saves minutes"), open);
    assertTrue(open.contains("anything from \u22120.90 to 0.30 minutes a shoe"), open);
  }

  private static String annex(double low, double high, Verdict verdict) {
    ShapeDifference found =
        new ShapeDifference(-0.5, OptionalDouble.of(low), OptionalDouble.of(high), verdict);
    WrittenBook book = evenYear();
    return String.valueOf(
        Workload.of(
                book.book(),
                book.jobs().all(),
                LocalDate.of(2026, 1, 1),
                LocalDate.of(2026, 12, 31),
                Optional.of(found))
            .report()
            .annex());
  }

  @Test
  void blows_to_stop_age_follow_the_mix() {
    // 14 years to the end of 2040. A week: 4 x 80 + 8 x 110 + 2 x 400 = 2,000.
    assertEquals("14.00", YEAR.value("2026", "years to Stop age"));
    assertEquals("104000", YEAR.value("2026", "blows"));
    assertEquals("1456000", YEAR.value("2026", "blows to Stop age, today's mix"));
    // All keg hot: 8 x 80 + 4 x 110 = 1,080 a week; all keg cold: 12 x 110 = 1,320.
    assertEquals("786240", YEAR.value("2026", "blows to Stop age, all steel keg hot"));
    assertEquals("960960", YEAR.value("2026", "blows to Stop age, all steel keg cold"));
  }

  @Test
  void equal_weeks_leave_no_spread_and_uneven_ones_do() {
    assertEquals("1456000", YEAR.cell("2026", "blows to Stop age, today's mix", "low"));
    Figures uneven =
        Figures.of(
            evenYear()
                .visit(
                    "Date: 2026-06-03, Place: Yard, Owner: Ash, Horse: Echo, Work: cold set,"
                        + " Shoe: keg"),
            "2026-12-31",
            HALF_A_MINUTE_QUICKER);
    double low = number(uneven, "blows to Stop age, today's mix", "low");
    double value = number(uneven, "blows to Stop age, today's mix", "value");
    double high = number(uneven, "blows to Stop age, today's mix", "high");
    // 51 weeks of 2,000 and one of 2,440: error of the mean 440 / 52, t(51) = 2.00758 (R, qt), a
    // year of 365 / 7 weeks, 14 years.
    double reach = 2.00758 * 440 / 52 * 365 / 7 * 14;
    assertEquals(value - reach, low, 2);
    assertEquals(value + reach, high, 2);
  }

  @Test
  void stall_jack_hours_to_stop_age_follow_the_mix_and_the_comparison() {
    // A week 28 + 30 = 58 minutes; 58 x 52 / 60 x 14 = 703.7.
    assertEquals("704", YEAR.value("2026", "hours at the stall jack to Stop age, today's mix"));
    // Only aluminium's 30 stay.
    assertEquals(
        "364", YEAR.value("2026", "hours at the stall jack to Stop age, all steel keg hot"));
    // 58 + 24 + 4 x 0.5 = 84 minutes a week; from 58 + 24 + 4 x 0.1 to 58 + 24 + 4 x 0.9.
    String cold = "hours at the stall jack to Stop age, all steel keg cold";
    assertEquals("1019", YEAR.value("2026", cold));
    assertEquals("1000", YEAR.cell("2026", cold, "low"));
    assertEquals("1039", YEAR.cell("2026", cold, "high"));
  }

  @Test
  void without_a_comparison_the_mix_that_needs_it_is_not_computed() {
    Figures year = Figures.of(evenYear(), "2026-12-31");
    assertTrue(year.has("2026", "hours at the stall jack to Stop age, all steel keg hot"));
    assertFalse(year.has("2026", "hours at the stall jack to Stop age, all steel keg cold"));
    assertFalse(year.has("2026", "changed week, all steel keg cold: hours in all"));
    assertFalse(year.has("2026", OutlookFigures.HOT_SHAPING));
  }

  @Test
  void hot_shaping_saves_its_minutes_less_the_setting_up() {
    // 208 hot shoes x -0.5; 52 stops x 6.
    assertEquals("-104", YEAR.value("2026", OutlookFigures.HOT_SHAPING));
    assertEquals("-187", YEAR.cell("2026", OutlookFigures.HOT_SHAPING, "low"));
    assertEquals("312", YEAR.value("2026", OutlookFigures.HOT_SET_UP));
    assertEquals("208", YEAR.value("2026", OutlookFigures.HOT_IN_ALL));
  }

  @Test
  void one_more_rest_day_takes_the_only_day_of_each_week() {
    // A week: 24 + 28 + 30 + 60 + 30 making + 6 = 178 minutes; x 52 / 60.
    assertEquals(
        "-154.3", YEAR.value("2026", "changed week, one more rest day a week: hours in all"));
    assertEquals("-156", YEAR.value("2026", "changed week, one more rest day a week: horses"));
  }

  @Test
  void no_day_above_the_limit_takes_one_horse_of_three_with_its_share_of_the_work() {
    // A third of 172 minutes (setting up stays) x 52 / 60.
    assertEquals("-49.7", YEAR.value("2026", "changed week, no day above 2 horses: hours in all"));
    assertEquals("-52", YEAR.value("2026", "changed week, no day above 2 horses: horses"));
  }

  @Test
  void all_hot_and_all_cold_move_shaping_making_and_setting_up() {
    // Hot: 4 cold shoes x -0.5, making -30, set-up as now: -32 a week.
    assertEquals("-27.7", YEAR.value("2026", "changed week, all steel keg hot: hours in all"));
    // Cold: 4 hot shoes x +0.5, making -30, set-up -6: -34 a week.
    assertEquals("-29.5", YEAR.value("2026", "changed week, all steel keg cold: hours in all"));
  }

  @Test
  void a_book_of_half_a_year_is_scaled_up_and_says_so() {
    Figures half = Figures.of(evenYear(), "2026-06-30", HALF_A_MINUTE_QUICKER);
    // 26 Tuesdays from 6 January to 30 June, 176 days: 26 x 2,000 x 365 / 176 x (14 + 184/365).
    assertEquals(
        26 * 2000 * 365.0 / 176 * (14 + 184 / 365.0),
        number(half, "blows to Stop age, today's mix", "value"),
        1);
    assertTrue(half.cell("2026", "blows to Stop age, today's mix", "basis").contains("scaled up"));
  }

  private static double number(Figures figures, String measure, String column) {
    return Double.parseDouble(figures.cell("2026", measure, column));
  }
}

package clenchbook.workload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import org.junit.jupiter.api.Test;

/**
 * Three days worked out by hand. The sums stand beside each expectation; nothing here was taken
 * from the program.
 */
class ThreeDaysByHandTest {

  /** 5, 6 and 7 October 2026 are Monday to Wednesday of week 41. */
  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.COUNTRY, "US")
        .setting(Setting.FORGE_SETUP_MIN, "6")
        .setting(Setting.WEEKLY_HOURS_LIMIT, "10")
        .setting(Setting.HORSES_PER_DAY_LIMIT, "2")
        .work("Work: trim, Trim min: 25")
        .work(
            "Work: full set, Shoe: keg, Shoes: 4, Shaping: hot, Trim min: 20, Shape min: 24,"
                + " Nail min: 20, Grind min: 6")
        .work("Work: bare, Shoes: 0")
        .work("Work: call-out, Kind: fee")
        .material("Item: keg, Kind: keg, Unit cost: 5")
        .material("Item: light, Kind: aluminium, Unit cost: 9")
        .material("Item: forged, Kind: handmade, Unit cost: 0, Making min: 15")
        .place("Place: Oak Farm, Drive min: 20")
        .place("Place: Mill Barn, Drive min: 35")
        .strain(
            "Task: trim, Effort CR10: 4, Efforts per min: 12, Seconds per effort: 2, Wrist deg: 30,"
                + " Wrist direction: flexion, Trunk deg: 70, Longest hold s: 90")
        .strain(
            "Task: nail, Effort CR10: 3, Efforts per min: 20, Seconds per effort: 0.5, Wrist deg:"
                + " 0, Trunk deg: 50, Longest hold s: 60, Blows per shoe: 60")
        .strain("Task: shape hot, Noise dBA: 100, Blows per shoe: 80")
        .strain("Task: shape cold, Noise dBA: 105, Blows per shoe: 110")
        .strain("Task: make, Blows per shoe: 400")
        .strain("Task: grind, Vibration m/s2: 5, Noise dBA: 90")
        .strain("Task: drive, Vibration m/s2: 3");
  }

  /** A day of parts: own minutes, standards, making, set-up once at each lit stop, own trips. */
  private static WrittenBook monday(WrittenBook book) {
    return book.visit(
            "Date: 2026-10-05, Place: Oak Farm, Owner: Ash, Horse: Bess, Work: full set,"
                + " Trim min: 22, Shape min: 30, Nail min: 21, Helper min: 40")
        .visit(
            "Date: 2026-10-05, Place: Oak Farm, Owner: Ash, Horse: Captain, Work: full set,"
                + " Shoe: forged, New shoes: 2, Trim min: 18")
        .visit("Date: 2026-10-05, Place: Mill Barn, Owner: Elm, Horse: Dora, Work: trim")
        .visit("Date: 2026-10-05, Place: Mill Barn, Owner: Elm, Horse: Dora, Work: call-out")
        .visit(
            "Date: 2026-10-05, Place: Mill Barn, Owner: Elm, Horse: Echo, Work: full set,"
                + " Reason: cancelled")
        .trip("Date: 2026-10-05, Distance: 40, Drive min: 75, Purpose: round")
        .trip("Date: 2026-10-05, Distance: 10, Drive min: 30, Purpose: private");
  }

  /** A day of totals: split as the standards are, a total without standards, no trips. */
  private static WrittenBook tuesday(WrittenBook book) {
    return book.visit(
            "Date: 2026-10-06, Place: Oak Farm, Owner: Ash, Horse: Fern, Work: full set,"
                + " Shaping: cold, Total min: 84")
        .visit(
            "Date: 2026-10-06, Place: Oak Farm, Owner: Ash, Horse: Gale, Work: bare,"
                + " Total min: 36")
        .visit(
            "Date: 2026-10-06, Place: Mill Barn, Owner: Elm, Horse: Hazel, Work: full set,"
                + " Shoe: light, Shaping: cold, Trim min: 15, Total min: 65");
  }

  /** A day without visits, but on business: driving, no day worked. */
  private static WrittenBook wednesday(WrittenBook book) {
    return book.trip("Date: 2026-10-07, Distance: 60, Drive min: 50, Purpose: supplies");
  }

  private static final Figures FIGURES =
      Figures.of(wednesday(tuesday(monday(book()))), "2026-10-31");

  @Test
  void monday_hours_by_hand() {
    // Bess 22 + 21, Captain 18 + 20, Dora 25: 106 minutes.
    assertEquals("1.77", FIGURES.value("2026-10-05", "hours under the horse"));
    // Bess 30, Captain's standard 24: 54 minutes.
    assertEquals("0.90", FIGURES.value("2026-10-05", "hours at the anvil"));
    assertEquals("0.00", FIGURES.value("2026-10-05", "hours at the stall jack"));
    // Two new forged shoes at 15.
    assertEquals("0.50", FIGURES.value("2026-10-05", "hours making"));
    // 6 standard for each of the two sets.
    assertEquals("0.20", FIGURES.value("2026-10-05", "hours grinding"));
    // One lit stop.
    assertEquals("0.10", FIGURES.value("2026-10-05", "hours setting up"));
    // The business trip alone: 75.
    assertEquals("1.25", FIGURES.value("2026-10-05", "hours driving"));
    // 106 + 54 + 30 + 12 + 6 + 75 = 283 minutes.
    assertEquals("4.72", FIGURES.value("2026-10-05", "hours in all"));
  }

  @Test
  void monday_counts_by_hand() {
    // Bess, Captain, Dora; the fee and the cancelled horse are none.
    assertEquals("3", FIGURES.value("2026-10-05", "horses"));
    assertEquals("2", FIGURES.cell("2026-10-05", "horses", "limit"));
    assertEquals("1.5", FIGURES.cell("2026-10-05", "horses", "share_of_limit"));
    assertEquals("8", FIGURES.value("2026-10-05", "shoes nailed"));
    // 8 hot x 80 + 8 nailed x 60 + 2 made x 400.
    assertEquals("1920", FIGURES.value("2026-10-05", "blows"));
  }

  @Test
  void monday_scores_by_hand() {
    // Trim 65 min: IM(0.4) 5.024, EM(12) 3.10, DM(2) 1.07, PM(30 flexion) 1.3720,
    // HM(1.0833) = 0.0455 + 0.0072 + 0.477 = 0.5297: 12.111.
    assertEquals("12.11", FIGURES.value("2026-10-05", "Revised Strain Index, trim"));
    // Nail 41 min: IM(0.3) 3.706, EM(20) 5.10, DM(0.5) 0.605, PM 1,
    // HM(0.6833) = 0.0287 - 0.0343 + 0.477 = 0.4714: 5.391.
    assertEquals("5.39", FIGURES.value("2026-10-05", "Revised Strain Index, nail"));
    // 12.111 + 5.391 / 0.4714 x (HM(1.7667) 0.6024 - 0.5297) = 12.942.
    assertEquals("12.94", FIGURES.value("2026-10-05", "Cumulative Strain Index (CUSI)"));
    // Grinding 12 min at 5: 2 x 25 x 0.2 = 10 points, A(8) = 2.5 x root of 0.1.
    assertEquals("10.00", FIGURES.value("2026-10-05", "hand-arm vibration points"));
    assertEquals("0.79", FIGURES.value("2026-10-05", "hand-arm vibration A(8)"));
    // 0.9 h at 100 over 2 h, 0.2 h at 90 over 8 h: 45 + 2.5.
    assertEquals("47.50", FIGURES.value("2026-10-05", "noise dose, OSHA"));
    // 0.9 h over 8 / 2^5 = 0.25 h, 0.2 h over 8 / 2^(5/3) = 2.5198 h: 360 + 7.94.
    assertEquals("367.94", FIGURES.value("2026-10-05", "noise dose, NIOSH"));
    // Trim at 70 and nail at 50 degrees: 106 minutes; beyond 60 only trim's 65.
    assertEquals("1.77", FIGURES.value("2026-10-05", "bent-trunk time"));
    assertEquals("1.08", FIGURES.value("2026-10-05", "bent-trunk time above 60 degrees"));
  }

  @Test
  void tuesday_hours_by_hand() {
    // Fern 84 over 20, 24, 20, 6 of 70: 24, 28.8, 24, 7.2. Gale's total has no standard: trim 36.
    // Hazel's own trim 15, the other 50 over 24, 20, 6: 24, 20, 6.
    // Under the horse 24 + 24 + 36 + 15 + 20 = 119.
    assertEquals("1.98", FIGURES.value("2026-10-06", "hours under the horse"));
    // 28.8 + 24 = 52.8 minutes, cold.
    assertEquals("0.88", FIGURES.value("2026-10-06", "hours at the stall jack"));
    assertEquals("0.00", FIGURES.value("2026-10-06", "hours at the anvil"));
    assertEquals("0.00", FIGURES.value("2026-10-06", "hours setting up"));
    assertEquals("0.22", FIGURES.value("2026-10-06", "hours grinding")); // 13.2
    // No trips: out and back to both places, 2 x 20 + 2 x 35.
    assertEquals("1.83", FIGURES.value("2026-10-06", "hours driving"));
    // 84 + 36 + 65 + 110 = 295.
    assertEquals("4.92", FIGURES.value("2026-10-06", "hours in all"));
    assertEquals("3", FIGURES.value("2026-10-06", "horses"));
    // 8 cold x 110 + 8 nailed x 60.
    assertEquals("1360", FIGURES.value("2026-10-06", "blows"));
  }

  @Test
  void a_split_total_says_so_in_its_parts_and_is_measured_as_a_whole() {
    assertEquals(
        "measured total split as standard",
        FIGURES.cell("2026-10-06", "hours at the stall jack", "basis"));
    // 185 of 295 minutes measured; the drive is Places' standard.
    assertEquals(
        "measured 62.7 %, standard 37.3 %", FIGURES.cell("2026-10-06", "hours in all", "basis"));
  }

  @Test
  void wednesday_is_driving_and_no_day_worked() {
    assertEquals("0.83", FIGURES.value("2026-10-07", "hours driving"));
    assertEquals("0.83", FIGURES.value("2026-10-07", "hours in all"));
    assertEquals("0", FIGURES.value("2026-10-07", "horses"));
    // Driving is rated, but never for hand-arm vibration.
    assertFalse(FIGURES.has("2026-10-07", "hand-arm vibration A(8)"));
  }

  @Test
  void the_week_the_month_and_the_year_are_their_sums() {
    // 283 + 295 + 50 = 628 minutes.
    for (String period : new String[] {"2026-W41", "2026-10", "2026"}) {
      assertEquals("10.47", FIGURES.value(period, "hours in all"));
      assertEquals("6", FIGURES.value(period, "horses"));
      assertEquals("2", FIGURES.value(period, "days worked"));
      assertEquals("3280", FIGURES.value(period, "blows"));
    }
    assertEquals("2", FIGURES.value("2026", "longest run of days"));
    assertEquals("10", FIGURES.cell("2026-W41", "hours in all", "limit"));
    assertEquals("1.0467", FIGURES.cell("2026-W41", "hours in all", "share_of_limit"));
    // Pro rata: 10.4667 x 365 / 304.
    assertEquals("12.57", FIGURES.value("2026", "projected hours"));
  }
}

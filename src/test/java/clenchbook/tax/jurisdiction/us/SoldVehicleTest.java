package clenchbook.tax.jurisdiction.us;

import static clenchbook.tax.YearBook.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.YearBook;
import clenchbook.tax.YearEndFindings;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A vehicle on the standard mileage rate that is sold: its basis falls by business miles times the
 * depreciation part of each year's rate (IRS Notice 2022-03, section 4, as reported).
 */
class SoldVehicleTest {

  private static WrittenBook us() {
    return new WrittenBook()
        .setting(Setting.TAX_REGIME, "us")
        .setting(Setting.DISTANCE_UNIT, "mile");
  }

  private static WrittenBook drive(WrittenBook book, String day, String miles, String vehicle) {
    return book.trip(
        "Date: "
            + day
            + ", From: Home, To: Oak, Distance: "
            + miles
            + ", Purpose: rounds, Vehicle: "
            + vehicle);
  }

  private static String asset(YearEndFindings findings, String column) {
    var table = YearBook.table(findings, "assets");
    return table.rows().get(0).get(table.columns().indexOf(column));
  }

  /** By hand: 5,000 x 0.33 + 3,000 x 0.35 = 2,700; 40,000 less 2,700 is 37,300; 20,000 for it. */
  @Test
  void the_basis_falls_by_each_years_own_part() {
    WrittenBook book =
        us().asset(
                "Asset: Truck, Bought: 2025-01-02, Cost: 40000, Class: truck, Sold: 2026-09-01,"
                    + " Proceeds: 20000");
    drive(book, "2025-03-01", "5000", "truck");
    drive(book, "2026-03-01", "3000", "truck");
    YearEndFindings findings = YearBook.end(book, List.of(), 2026);
    assertEquals("-17300.00", asset(findings, "gain"));
    assertEquals("37300.00", asset(findings, "remaining"));
    assertEquals("2700.00", asset(findings, "taken_by_mileage"));
    assertEquals("0.00", asset(findings, "depreciation_before"));
    assertEquals("0.00", asset(findings, "depreciation"));
    assertEquals(Optional.empty(), YearBook.amount(findings, "13"));
  }

  /**
   * 10,000 miles a year from 2010 to 2014 take 11,300 off the basis: an answer in a tax filing
   * forum that cites IRS Notice 2022-03, section 4, "Basis reduction amount".
   */
  @Test
  void five_years_at_ten_thousand_miles_as_published() {
    WrittenBook book =
        us().asset(
                "Asset: Car, Bought: 2010-01-01, Cost: 30000, Class: car, Sold: 2014-12-31,"
                    + " Proceeds: 18700");
    for (int year = 2010; year <= 2014; year++) {
      drive(book, year + "-06-01", "10000", "");
    }
    YearEndFindings findings = YearBook.end(book, List.of(), 2014);
    assertEquals("11300.00", asset(findings, "taken_by_mileage"));
    assertEquals("0.00", asset(findings, "gain"));
  }

  /**
   * At 30 cents of 2024: 50,000 less 100,000 miles is 20,000; 20,000 less them is 0 (an answer in a
   * forum of tax preparers on the depreciation within the standard mileage rate).
   */
  @Test
  void the_basis_never_falls_below_nothing() {
    for (List<String> given : List.of(List.of("50000", "20000.00"), List.of("20000", "0.00"))) {
      WrittenBook book =
          us().asset(
                  "Asset: Car, Bought: 2024-01-01, Cost: "
                      + given.get(0)
                      + ", Class: car, Sold: 2024-12-30, Proceeds: 1000");
      drive(book, "2024-06-01", "100000", "car");
      assertEquals(
          given.get(1), asset(YearBook.end(book, List.of(), 2024), "remaining"), given.get(0));
    }
  }

  /** The years before the log are not guessed: no gain, and the page says what to ask. */
  @Test
  void no_gain_is_printed_where_the_log_does_not_reach_back() {
    WrittenBook book =
        us().asset(
                "Asset: Truck, Bought: 2022-03-01, Cost: 18000, Class: truck, Sold: 2026-05-01,"
                    + " Proceeds: 13500");
    drive(book, "2025-03-01", "5000", "truck");
    drive(book, "2026-03-01", "1000", "truck");
    YearEndFindings findings = YearBook.end(book, List.of(), 2026);
    assertEquals("", asset(findings, "gain"));
    assertEquals("", asset(findings, "remaining"));
    assertTrue(
        says(findings, "does not reach back to 2022-03-01"), YearBook.notes(findings).toString());
  }

  @Test
  void a_year_without_a_trip_in_between_leaves_the_gain_open() {
    WrittenBook book =
        us().asset(
                "Asset: Truck, Bought: 2023-01-05, Cost: 18000, Class: truck, Sold: 2025-05-01,"
                    + " Proceeds: 13500");
    drive(book, "2023-02-01", "5000", "truck");
    drive(book, "2025-02-01", "1000", "truck");
    YearEndFindings findings = YearBook.end(book, List.of(), 2025);
    assertEquals("", asset(findings, "gain"));
    assertEquals("the log has no trip of 2024", asset(findings, "not_known"));
  }

  @Test
  void trips_that_may_be_of_either_truck_leave_the_gain_open() {
    WrittenBook book =
        us().asset(
                "Asset: Old truck, Bought: 2025-01-01, Cost: 9000, Class: truck, Sold: 2025-12-01,"
                    + " Proceeds: 8000")
            .asset("Asset: New truck, Bought: 2025-06-01, Cost: 30000, Class: truck");
    drive(book, "2025-01-10", "100", "");
    drive(book, "2025-07-10", "100", "");
    assertEquals("", asset(YearBook.end(book, List.of(), 2025), "gain"));
    drive(book, "2025-08-10", "100", "old truck");
    assertTrue(asset(YearBook.end(book, List.of(), 2025), "not_known").startsWith("1 trips"));
  }

  /** A van on mileage is outside the tables, so it is no part of the mid-quarter test either. */
  @Test
  void a_vehicle_on_mileage_does_not_make_the_tools_mid_quarter() {
    WrittenBook book =
        us().asset("Asset: Anvil, Bought: 2025-03-01, Cost: 1000, Class: anvil")
            .asset("Asset: Truck, Bought: 2025-11-01, Cost: 30000, Class: truck");
    drive(book, "2025-11-10", "100", "truck");
    YearEndFindings findings = YearBook.end(book, List.of(), 2025);
    assertEquals("half-year", asset(findings, "convention"));
    assertEquals(Optional.of("142.90"), YearBook.amount(findings, "13"));
  }
}

package clenchbook.comparison.questions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.costing.JobCosts;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the comparisons are told of a job and of the settings; figures on paper. */
class ComparedJobsTest {
  private static ComparedJob job(WrittenBook book) {
    Jobs jobs = book.jobs();
    return ComparedJobs.of(jobs, JobCosts.of(jobs, LocalDate.of(2026, 10, 31))).get(0);
  }

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.TAX_NUMBER, "GB1")
        .tax("Code: S, Name: VAT, Rate %: 20")
        .work("Work: Set, Price: 120, Tax: S, Shape min: 22")
        .material("Item: pads, Kind: pad, Price: 6")
        .material("Item: studs, Kind: stud");
  }

  private static final String ROW =
      "Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Set, Place: Yard, Shoes: 4,"
          + " Shaping: hot, ";

  @Test
  void a_row_is_told_with_its_names_counts_and_minutes() {
    ComparedJob job =
        job(
            book()
                .visit(
                    ROW
                        + "Charge: list, New shoes: 3, Lost: 1, Trim min: 10, Shape min: 20,"
                        + " Nail min: 25, Forge min: 15, Helper min: 7"));
    assertEquals("Set", job.work());
    assertEquals("Bess", job.horseName());
    assertEquals("Ruth", job.owner());
    assertEquals("2026-10-05 / yard", job.stop());
    assertEquals(3, job.newShoes());
    assertEquals(OptionalInt.of(1), job.lost());
    assertEquals(Optional.of(new BigDecimal("20")), job.time().ownShape());
    assertEquals(true, job.time().measured());
    // 55 and five minutes of setting up.
    assertEquals(0, new BigDecimal("60").compareTo(job.time().job()));
    assertEquals(new BigDecimal("7"), job.time().helper());
    assertEquals(new BigDecimal("15"), job.time().forge());
  }

  @Test
  void a_standard_shape_time_is_not_the_jobs_own() {
    ComparedJob job = job(book().visit(ROW + "Charge: list, Trim min: 10"));
    assertEquals(Optional.empty(), job.time().ownShape());
    assertEquals(false, job.time().measured());
    assertEquals(OptionalInt.empty(), job.lost());
  }

  @ParameterizedTest
  @CsvSource({"no, 132.00, 120.00, 132.00", "yes, 110.00, 100.00, 110.00"})
  void list_and_charge_are_without_the_tax_that_they_may_include(
      String included, BigDecimal list, BigDecimal workList, BigDecimal charged) {
    ComparedJob job =
        job(
            book()
                .setting(Setting.PRICES_INCLUDE_TAX, included)
                .visit(ROW + "Charge: list, Extras: pads:2; studs:8"));
    assertEquals(Optional.of(list), job.money().list());
    assertEquals(Optional.of(workList), job.money().workList());
    assertEquals(charged, job.money().charged());
  }

  @Test
  void a_free_job_and_one_without_a_list_price_are_told_as_they_are() {
    ComparedJob free =
        job(book().setting(Setting.PRICES_INCLUDE_TAX, "yes").visit(ROW + "Charge: 0"));
    assertEquals(Optional.of(new BigDecimal("120.00")), free.money().list());
    ComparedJob unlisted =
        job(book().visit("Date: 2026-10-05, Horse: B, Owner: R, Work: Odd, Charge: 30"));
    assertEquals(Optional.empty(), unlisted.money().list());
    ComparedJob cancelled = job(book().visit(ROW + "Charge: list, Reason: cancelled"));
    assertEquals(Optional.empty(), cancelled.money().list());
  }

  @Test
  void jobs_stand_by_date_and_row() {
    WrittenBook book =
        book()
            .visit(ROW.replace("10-05", "10-07") + "Charge: 1")
            .visit(ROW + "Charge: 2")
            .visit(ROW.replace("Bess", "Jet") + "Charge: 3");
    Jobs jobs = book.jobs();
    assertEquals(
        List.of(3, 4, 2),
        ComparedJobs.of(jobs, JobCosts.of(jobs, LocalDate.of(2026, 10, 31))).stream()
            .map(each -> each.source().row())
            .toList());
  }

  /** 0.9 kg an hour at 3.00 a kilogram are 0.045 a minute. */
  @Test
  void what_the_settings_give_is_a_rate_and_what_they_don_t_is_none() {
    CompareRates given =
        ComparedJobs.rates(
            new WrittenBook()
                .setting(Setting.HOURLY_WAGE, "30")
                .setting(Setting.HELPER_WAGE, "12")
                .setting(Setting.GAS_COST_KG, "3")
                .setting(Setting.GAS_BURN_KG, "0.9")
                .setting(Setting.FORGE_SETUP_MIN, "6")
                .setting(Setting.FORGE_SETUP_GAS_MIN, "4")
                .setting(Setting.TARGET_MARGIN, "20")
                .book()
                .settings());
    assertEquals(0.5, given.wagePerMinute(), 1e-12);
    assertEquals(0.18, given.gas(new BigDecimal("4")), 1e-12);
    assertEquals(true, given.setupGiven());
    assertEquals(0, new BigDecimal("0.2").compareTo(given.targetMargin().orElseThrow()));

    CompareRates none =
        ComparedJobs.rates(
            new WrittenBook().setting(Setting.FORGE_SETUP_MIN, "6").book().settings());
    assertEquals(0, none.wagePerMinute());
    assertEquals(0, none.gas(BigDecimal.TEN));
    assertEquals(Optional.empty(), none.wage());
    assertEquals(Optional.empty(), none.gasPerMinute());
    assertEquals(false, none.setupGiven(), "only one of the two");
    assertEquals(Optional.empty(), none.targetMargin());
  }

  @Test
  void a_target_of_all_that_is_charged_is_none() {
    assertEquals(
        Optional.empty(),
        ComparedJobs.rates(
                new WrittenBook().setting(Setting.TARGET_MARGIN, "100").book().settings())
            .targetMargin());
  }
}

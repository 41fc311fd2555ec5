package clenchbook.jobs.charge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a job is charged to whom, worked out on paper from the order in docs/figures.md. */
class JobChargesTest {
  private static final String ROW = "Date: 2026-10-05, Horse: Bess, Work: Full set, ";
  private static final String RUTHS = ROW + "Owner: Ruth, ";

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.TAX_NUMBER, "GB123456789")
        .tax("Code: S, Name: VAT, Rate %: 20")
        .tax("Code: R, Name: VAT, Rate %: 5, Kind: reduced")
        .work("Work: Full set, Price: 100, Tax: S")
        .material("Item: pads, Kind: pad, Price: 7.50")
        .material("Item: studs, Kind: stud");
  }

  /** The first job's lines as {@code payer kind part item amount tax}. */
  private static List<String> lines(WrittenBook book) {
    return charged(book).stream().map(JobChargesTest::written).toList();
  }

  private static List<ChargeLine> charged(WrittenBook book) {
    Jobs jobs = book.jobs();
    return new JobCharges(jobs.index()).lines(jobs.all().get(0));
  }

  private static String written(ChargeLine line) {
    return String.join(
        " ",
        line.payer().name(),
        line.kind() + (line.item().isEmpty() ? "" : " " + line.count() + " " + line.item()),
        line.part().toString(),
        line.amount().toPlainString(),
        line.tax().code().isEmpty() ? "-" : line.tax().code());
  }

  @Test
  void the_list_price_and_the_priced_extras_are_lines_of_their_own() {
    WrittenBook book = book().visit(RUTHS + "Charge: list, Extras: pads:2; studs:8");
    assertEquals(
        List.of("Ruth WORK WHOLE 100.00 S", "Ruth EXTRA 2 pads WHOLE 15.00 S"), lines(book));
  }

  @Test
  void a_typed_charge_is_final_and_holds_the_extras() {
    WrittenBook book =
        book().owner("Owner: Ruth, Discount %: 10").visit(RUTHS + "Charge: 80, Extras: pads:2");
    assertEquals(List.of("Ruth WORK WHOLE 80.00 S"), lines(book));
  }

  @Test
  void a_discount_lowers_list_prices_and_extras_each_rounded() {
    WrittenBook book =
        book().owner("Owner: Ruth, Discount %: 7.5").visit(RUTHS + "Charge: list, Extras: pads:1");
    // 92.50, and 7.50 x 0.925 = 6.9375.
    assertEquals(List.of("Ruth WORK WHOLE 92.50 S", "Ruth EXTRA 1 pads WHOLE 6.94 S"), lines(book));
    ChargeLine work = charged(book).get(0);
    assertEquals(new BigDecimal("100.00"), work.listAmount());
    assertEquals(new BigDecimal("7.5"), work.discountPercent());
  }

  @Test
  void shares_come_before_each_payers_discount() {
    WrittenBook book =
        book()
            .owner("Owner: Ruth, Discount %: 10")
            .horse("Horse: Bess, Owner: Ruth, Share %: 33.33")
            .horse("Horse: Bess, Owner: Adam, Share %: 66.67")
            .visit(ROW + "Charge: list, Extras: pads:1");
    // 33.33 less 10 % is 29.997; of 7.50 Ruth has 2.50 and pays 2.25.
    assertEquals(
        List.of(
            "Ruth WORK WHOLE 30.00 S",
            "Adam WORK WHOLE 66.67 S",
            "Ruth EXTRA 1 pads WHOLE 2.25 S",
            "Adam EXTRA 1 pads WHOLE 5.00 S"),
        lines(book));
  }

  @Test
  void where_only_goods_are_taxed_goods_and_rest_are_two_lines() {
    WrittenBook book =
        book()
            .work("Work: Taxed goods, Price: 99.99, Tax: S, Taxed part: 0.3")
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Taxed goods, Charge: list");
    // 29.997 rounded, and what is left of 99.99.
    assertEquals(List.of("Ruth WORK GOODS 30.00 S", "Ruth WORK REST 69.99 -"), lines(book));
  }

  @ParameterizedTest
  @CsvSource({"0, Ruth WORK REST 50.00 -", "1, Ruth WORK GOODS 50.00 S"})
  void nothing_or_all_of_it_goods_is_one_line(String part, String line) {
    WrittenBook book =
        book()
            .work("Work: Trim, Price: 50, Tax: S, Taxed part: " + part)
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list");
    assertEquals(List.of(line), lines(book));
  }

  @Test
  void a_business_that_charges_no_tax_parts_nothing() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "uk")
            .tax("Code: S, Name: VAT, Rate %: 20")
            .work("Work: Trim, Price: 50, Tax: S, Taxed part: 0.3")
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list");
    assertEquals(List.of("Ruth WORK WHOLE 50.00 -"), lines(book));
    assertEquals(LineTax.NONE, charged(book).get(0).tax());
  }

  @Test
  void a_work_without_a_code_is_untaxed_by_a_registered_business() {
    WrittenBook book =
        book()
            .work("Work: Trim, Price: 50")
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list");
    assertEquals(LineTax.UNCODED, charged(book).get(0).tax());
  }

  @Test
  void the_rate_is_that_of_the_visits_day() {
    WrittenBook book =
        book()
            .tax("Code: S, Name: VAT, Rate %: 21, From: 2026-10-06")
            .visit(RUTHS + "Charge: list")
            .visit("Date: 2026-10-06, Horse: Bess, Owner: Ruth, Work: Full set, Charge: list");
    Jobs jobs = book.jobs();
    List<String> rates =
        jobs.all().stream()
            .map(job -> new JobCharges(jobs.index()).lines(job).get(0).tax())
            .map(tax -> tax.ratePercent().toPlainString())
            .toList();
    assertEquals(List.of("20", "21"), rates);
  }

  @Test
  void a_code_that_charges_nothing_has_no_rate_whatever_the_sheet_says() {
    WrittenBook book =
        book()
            .tax("Code: X, Name: Exempt, Rate %: 20, Kind: exempt")
            .work("Work: Trim, Price: 50, Tax: X")
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list");
    assertEquals(BigDecimal.ZERO, charged(book).get(0).tax().ratePercent());
  }

  @Test
  void an_exempt_owner_pays_the_net_for_their_own_reason() {
    WrittenBook book =
        book()
            .owner("Owner: Ruth, Tax exempt: yes, Exempt reason: embassy")
            .visit(RUTHS + "Charge: list");
    LineTax tax = charged(book).get(0).tax();
    assertEquals(true, tax.exempt());
    assertEquals("embassy", tax.reason());
    assertEquals(BigDecimal.ZERO, tax.chargedPercent());
  }

  @Test
  void an_owner_who_is_not_exempt_lends_a_code_no_reason() {
    WrittenBook book =
        book()
            .owner("Owner: Ruth, Exempt reason: embassy")
            .tax("Code: X, Name: Exempt, Kind: exempt, Reason: no tax on horses")
            .work("Work: Trim, Price: 50, Tax: X")
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: list");
    assertEquals("no tax on horses", charged(book).get(0).tax().reason());
  }

  @Test
  void a_cancelled_visit_is_charged_to_nobody() {
    assertEquals(List.of(), lines(book().visit(RUTHS + "Charge: list, Reason: cancelled")));
  }

  @Test
  void a_free_visit_is_a_line_of_nothing() {
    assertEquals(List.of("Ruth WORK WHOLE 0.00 S"), lines(book().visit(RUTHS + "Charge: 0")));
  }

  /** 100.00 / 1.2 is 83.333, 7.50 / 1.2 is 6.25: together 89.583 and once rounded. */
  @Test
  void under_prices_that_include_tax_a_jobs_net_is_rounded_once() {
    WrittenBook book =
        book()
            .setting(Setting.PRICES_INCLUDE_TAX, "yes")
            .visit(RUTHS + "Charge: list, Extras: pads:1");
    Jobs jobs = book.jobs();
    JobCharges charges = new JobCharges(jobs.index());
    Job job = jobs.all().get(0);
    assertEquals(new BigDecimal("89.58"), charges.net(charges.lines(job)));
  }

  @Test
  void else_a_jobs_net_is_what_is_charged() {
    WrittenBook book = book().visit(RUTHS + "Charge: list, Extras: pads:1");
    Jobs jobs = book.jobs();
    JobCharges charges = new JobCharges(jobs.index());
    assertEquals(new BigDecimal("107.50"), charges.net(charges.lines(jobs.all().get(0))));
  }
}

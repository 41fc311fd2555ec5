package clenchbook.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.reports.blocks.PlainBlocks;
import clenchbook.schedule.DueList;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gas bought against gas burned, worked out on paper; a pound is 0.45359237 kg by definition. */
class GasMonthTest {
  private static final YearMonth OCTOBER = YearMonth.of(2026, 10);

  private static WrittenBook book() {
    return new WrittenBook()
        .material("Item: Propane, Kind: gas, Unit: kg, Unit cost: 3")
        .material("Item: Cylinder, Kind: gas, Unit cost: 33")
        .material("Item: Keg, Kind: keg, Unit cost: 4");
  }

  private static GasMonth gas(WrittenBook book) {
    return GasMonth.of(book.jobs(), "2026-10", OCTOBER.atDay(1), OCTOBER.atEndOfMonth());
  }

  @ParameterizedTest
  @CsvSource({
    "'Item: Propane, Quantity: 11, Unit: kg, Net: 33', 11, MEASURED, 0",
    "'Item: Propane, Quantity: 11, Net: 33', 11, MEASURED, 0",
    "'Item: Cylinder, Quantity: 1, Net: 30', 10, DEFAULT, 0",
    "'Item: Keg, Quantity: 1, Net: 30', 0, MEASURED, 0",
    "'Category: Forge gas, Net: 30', 10, DEFAULT, 0",
    "'Category: PROPANE, Net: 30', 10, DEFAULT, 0",
    "'Category: Gasoline, Net: 30', 0, MEASURED, 0",
    "'Category: Insurance, Net: 30', 0, MEASURED, 0"
  })
  void gas_is_weighed_or_turned_into_weight_by_its_cost(
      String purchase, BigDecimal kg, Basis basis, int uncounted) {
    GasMonth gas =
        gas(book().setting(Setting.GAS_COST_KG, "3").purchase("Date: 2026-10-02, " + purchase));
    assertEquals(0, kg.compareTo(gas.boughtKg()), gas.boughtKg()::toPlainString);
    assertEquals(basis, gas.basis());
    assertEquals(uncounted, gas.uncounted());
  }

  @Test
  void without_a_cost_money_is_no_weight_and_that_is_said() {
    WrittenBook book =
        book()
            .purchase("Date: 2026-10-02, Category: Gas, Net: 30")
            .purchase("Date: 2026-10-03, Item: Cylinder, Quantity: 1, Net: 33");
    GasMonth gas = gas(book);
    assertEquals(2, gas.uncounted());
    assertEquals(0, gas.boughtKg().signum());
    assertEquals(true, gas.told());
    assertEquals(
        true,
        Stock.of(book.jobs(), DueList.of(book.jobs(), OCTOBER), OCTOBER)
            .warnings()
            .get(0)
            .startsWith("Gas, 2026-10: 2 purchases could not be turned into weight;"));
  }

  @ParameterizedTest
  @CsvSource({"2026-09-30, 0", "2026-10-01, 10", "2026-10-31, 10", "2026-11-01, 0"})
  void the_period_holds_its_first_and_its_last_day(String day, BigDecimal kg) {
    WrittenBook book =
        book().setting(Setting.GAS_COST_KG, "3").purchase("Category: Gas, Net: 30, Date: " + day);
    assertEquals(0, kg.compareTo(gas(book).boughtKg()));
    assertEquals(kg.signum() > 0, gas(book).told());
  }

  @ParameterizedTest
  @CsvSource({"yes, 10", "no, 12"})
  void input_tax_that_comes_back_bought_no_gas(String recovered, BigDecimal kg) {
    WrittenBook book =
        book()
            .setting(Setting.GAS_COST_KG, "3")
            .setting(Setting.INPUT_TAX_RECOVERED, recovered)
            .purchase("Date: 2026-10-02, Category: Gas, Net: 30, Gross: 36");
    assertEquals(0, kg.compareTo(gas(book).boughtKg()));
  }

  @ParameterizedTest
  @CsvSource({"GAS_BURN_KG, MEASURED", "GAS_BURN_LB, MEASURED", "LEAD_DAYS, DEFAULT"})
  void a_burn_rate_of_the_settings_is_measured(Setting setting, Basis basis) {
    assertEquals(basis, gas(book().setting(setting, "1")).burnBasis());
  }

  /** 55 min and 5 of setting up at 2 lb an hour explain 2 lb; 11 kg are 24.25 lb. */
  @Test
  void the_page_says_it_in_pounds_where_units_are_imperial() {
    WrittenBook book =
        book()
            .setting(Setting.UNITS, "imperial")
            .setting(Setting.GAS_BURN_LB, "2")
            .purchase("Date: 2026-10-02, Item: Propane, Quantity: 11, Unit: kg, Net: 33")
            .visit(
                "Date: 2026-10-05, Horse: A, Owner: R, Work: Set, Shoes: 4, Shaping: hot,"
                    + " Forge min: 55");
    StockFindings found = Stock.of(book.jobs(), DueList.of(book.jobs(), OCTOBER), OCTOBER);
    assertEquals(
        List.of(
            "Gas in lb: Period | Bought | Forge burned | Explained | Difference | Burn an hour"
                + " | Burn that would explain it",
            "2026-10 | 24.25 | 1 h | 2.00 | 22.25 | 2.00 | 24.25",
            "twelve months | 24.25 | 1 h | 2.00 | 22.25 | 2.00 | 24.25"),
        PlainBlocks.table(found.report().annex(), "Gas in lb"));
  }

  @Test
  void a_month_that_only_burned_is_told_and_what_was_bought_explains_nothing() {
    WrittenBook book =
        book()
            .visit(
                "Date: 2026-10-05, Horse: A, Owner: R, Work: Set, Shoes: 4, Shaping: hot,"
                    + " Forge min: 55");
    GasMonth gas = gas(book);
    assertEquals(true, gas.told());
    assertEquals(
        0, new BigDecimal("-0.8").compareTo(gas.differenceKg()), "an hour at the default rate");
    assertEquals(
        false, GasMonth.of(book.jobs(), "x", LocalDate.MIN, LocalDate.of(2026, 10, 4)).told());
    assertEquals(false, gas(book()).told());
    assertEquals(LocalDate.of(2026, 10, 5), gas.burn().minutes().keySet().iterator().next());
  }
}

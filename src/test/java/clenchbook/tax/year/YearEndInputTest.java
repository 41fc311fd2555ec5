package clenchbook.tax.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.page.Bases;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.WrittenRates;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a year's end is made from: its days, its basis, its regime's codes. */
class YearEndInputTest {
  private static final TaxYear YEAR =
      new TaxYear(
          WrittenRates.regime(),
          2026,
          new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31)),
          false);

  private static YearEndInput input(Optional<Integer> quarter) {
    return new YearEndInput(
        new WrittenBook().jobs(), List.of(), YEAR, quarter, WrittenRates.tables(), StockValue.NONE);
  }

  @Test
  void the_period_is_the_quarter_asked_for_or_the_whole_year() {
    assertEquals(YEAR.days(), input(Optional.empty()).period());
    assertEquals(
        new Period(LocalDate.of(2026, 4, 1), LocalDate.of(2026, 6, 30)),
        input(Optional.of(2)).period());
  }

  @Test
  void another_stock_changes_nothing_else() {
    StockValue stock = new StockValue(BigDecimal.ONE, BigDecimal.TEN, true);
    YearEndInput before = input(Optional.of(2));
    assertEquals(
        new YearEndInput(before.jobs(), List.of(), YEAR, Optional.of(2), before.rates(), stock),
        before.withStock(stock));
  }

  @Test
  void the_book_is_the_one_of_its_visits() {
    Jobs jobs = new WrittenBook().setting(Setting.BUSINESS_NAME, "Ash Forge").jobs();
    YearEndInput input =
        new YearEndInput(
            jobs, List.of(), YEAR, Optional.empty(), WrittenRates.tables(), StockValue.NONE);
    assertEquals("Ash Forge", input.book().settings().text(Setting.BUSINESS_NAME));
  }

  @ParameterizedTest
  @CsvSource({
    "cash,true,true,true,cash,cash",
    "cash,false,false,true,'invoiced, because there is no Payments sheet',cash",
    "invoiced,true,false,false,invoiced,invoiced"
  })
  void cash_needs_a_payments_sheet_and_says_where_there_is_none(
      String setting, boolean payments, boolean income, boolean cost, String word, String costs) {
    WrittenBook book = new WrittenBook().setting(Setting.TAX_BASIS, setting);
    if (payments) {
      book.payment("Date: 2026-01-01, Owner: Ash, Amount: 1");
    }
    TaxBasis basis = TaxBasis.of(book.book());
    assertEquals(
        List.of(income, cost, word),
        List.of(basis.cashIncome(), basis.cashCost(), basis.word().file()));
    assertEquals(costs, basis.costWord().file());
  }

  @Test
  void a_law_that_knows_only_cash_does_not_ask_the_setting() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_BASIS, "invoiced")
            .payment("Date: 2026-01-01, Owner: Ash, Amount: 1");
    assertEquals(new TaxBasis(true, true, Bases.CASH), TaxBasis.ofCash(book.book()));
  }

  @Test
  void goods_count_on_a_line_of_their_own_by_the_basis_and_tables_stand_in_the_regimes_folder() {
    Regime regime = WrittenRates.regime();
    assertEquals("bought", regime.codes().goods(new TaxBasis(true, true, Wording.NONE)));
    assertEquals("bought", regime.codes().goods(new TaxBasis(false, true, Wording.NONE)));
    assertEquals("used", regime.codes().goods(new TaxBasis(false, false, Wording.NONE)));
    assertEquals("x/lines", regime.lineTable());
    assertEquals("x/mileage", regime.table("mileage"));
  }

  @Test
  void a_count_behind_the_closing_stock_is_told() {
    Period year = YEAR.days();
    WrittenBook book =
        new WrittenBook()
            .material("Item: keg, Kind: keg, Unit cost: 5")
            .purchase("Date: 2026-03-10, Supplier: Depot, Item: keg, Quantity: 10, Gross: 60");
    assertFalse(StockValue.of(book.jobs(), year).counted());
    book.count("Date: 2026-11-30, Item: keg, Quantity: 9");
    assertTrue(StockValue.of(book.jobs(), year).counted());
    assertEquals(new BigDecimal("54.00"), StockValue.of(book.jobs(), year).closing());
  }
}

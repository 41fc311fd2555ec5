package clenchbook.tax.income;

import static clenchbook.tax.income.WrittenBill.bill;
import static clenchbook.tax.income.WrittenBill.invoice;
import static clenchbook.tax.income.WrittenBill.line;
import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.page.Bases;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.RateTables;
import clenchbook.tax.rates.WrittenRates;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.StockValue;
import clenchbook.tax.year.TaxBasis;
import clenchbook.tax.year.TaxYear;
import clenchbook.tax.year.YearEndInput;
import clenchbook.values.Period;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Odd cents, lines of nothing and the rows behind the entries, by hand (common practice, no
 * source). Money that pays no bill has a line of its own here.
 */
class IncomeCountTest {
  private static final Period YEAR =
      new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31));
  private static final TaxBasis CASH = new TaxBasis(true, true, Bases.CASH);
  private static final TaxBasis INVOICED = new TaxBasis(false, false, Bases.INVOICED);
  private static final RateTables RATES =
      WrittenRates.tables(
          "x/lines, work, line, 1, Receipts",
          "x/lines, other, line, 3, Other",
          "x/lines, refunds, line, 2, Returns",
          "x/lines, bad debts, line, 27, Bad debts");

  /** One bill of 100.00 and 20.00 of tax. */
  private static final Billed BILL =
      invoice("1", "2026-03-31", line(7, "2026-03-02", "100.00", "20.00"));

  private static final IncomeLines ONTO =
      new IncomeLines() {
        @Override
        public String sold(Sold sold) {
          return "work";
        }

        @Override
        public String givenBack(Sold sold) {
          return "refunds";
        }

        @Override
        public String tip(LocalDate day) {
          return "other";
        }

        @Override
        public String withoutBill(LocalDate day, boolean givenBack) {
          return "other";
        }
      };

  private static Income count(WrittenBook book, TaxBasis basis, Billed... billed) {
    Regime regime = WrittenRates.regime();
    YearEndInput input =
        new YearEndInput(
            book.setting(Setting.CURRENCY, "GBP").jobs(),
            List.of(),
            new TaxYear(regime, 2026, YEAR, false),
            Optional.empty(),
            RATES,
            StockValue.NONE);
    LineScheme lines = new LineScheme(regime, YEAR.last(), new RateLookup(RATES));
    return Income.of(input, List.of(billed), YEAR, basis, lines, ONTO);
  }

  private static WrittenBook paid(String amount) {
    return new WrittenBook().payment("Owner: Ruth, Date: 2026-04-10, Amount: " + amount);
  }

  private static List<String> items(Income income) {
    return income.items().stream().map(item -> item.code() + " " + written(item)).toList();
  }

  private static String written(LineItem item) {
    return item.net().toPlainString() + " " + item.tax().toPlainString();
  }

  @Test
  void a_bill_paid_to_the_cent_leaves_nothing_on_the_other_line() {
    assertEquals(List.of("work 100.00 20.00"), items(count(paid("120"), CASH, BILL)));
  }

  @Test
  void an_odd_cent_counts_with_the_work_and_more_than_one_does_not() {
    assertEquals(List.of("work 100.01 20.00"), items(count(paid("120.01"), CASH, BILL)));
    assertEquals(
        List.of("other 0.02 0.00", "work 100.00 20.00"), items(count(paid("120.02"), CASH, BILL)));
  }

  @Test
  void a_cent_that_pays_no_bill_stands_on_its_own_line() {
    assertEquals(List.of("other 0.01 0.00"), items(count(paid("0.01"), CASH)));
  }

  /** Two codes ask alike; one cent goes to the first, so the second sold nothing. */
  @Test
  void a_code_that_takes_nothing_of_a_payment_is_no_sale() {
    Billed two =
        invoice(
            "1",
            "2026-03-31",
            line(7, "2026-03-02", "50.00", "10.00"),
            line(7, "2026-03-02", "50.00", "0.00"));
    assertEquals(
        List.of("S 0.01 0.00"),
        count(paid("0.01"), CASH, two).sales().stream()
            .map(sale -> sale.sold().taxCode() + " " + written(sale.item()))
            .toList());
  }

  @Test
  void a_line_without_tax_counts_and_a_line_of_nothing_does_not() {
    Billed three =
        invoice(
            "1",
            "2026-03-31",
            line(7, "2026-03-02", "100.00", "20.00"),
            line(8, "2026-03-03", "50.00", "0.00"),
            line(9, "2026-03-04", "0.00", "0.00"));
    Income found = count(new WrittenBook(), INVOICED, three);
    assertEquals(List.of("work 100.00 20.00", "work 50.00 0.00"), items(found));
    assertEquals(2, found.sales().size());
  }

  @Test
  void an_entry_names_the_register_for_an_invoice_and_else_the_visits_row() {
    Billed before =
        bill(
            Billed.Standing.BEFORE_REGISTER,
            "",
            "2026-02-02",
            line(5, "2026-02-02", "100.00", "20.00"));
    assertEquals(
        List.of("Visits 5", "register 0"),
        count(new WrittenBook(), INVOICED, before, BILL).journal().stream()
            .map(entry -> entry.sheet() + " " + entry.row())
            .toList());
  }

  @Test
  void only_what_was_given_up_is_written_off() {
    WrittenBook book =
        paid("60").payment("Owner: Ruth, Date: 2026-04-11, Amount: 60, Kind: written off");
    assertEquals("60.00", count(book, CASH, BILL).writtenOff().toPlainString());
  }

  @Test
  void a_visit_for_nothing_that_is_said_to_be_paid_brings_no_money() {
    WrittenBook book =
        new WrittenBook()
            .work("Work: Look, Price: 0")
            .work("Work: Trim, Price: 100")
            .visit("Date: 2026-03-02, Horse: Bess, Owner: Ruth, Work: Look, Charge: 0, Paid: yes")
            .visit(
                "Date: 2026-03-03, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 100, Paid: yes");
    assertEquals(
        List.of("2026-03-03 100.00"),
        count(book, CASH).receipts().stream()
            .map(receipt -> receipt.date() + " " + receipt.amount().toPlainString())
            .toList());
  }
}

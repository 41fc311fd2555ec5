package clenchbook.tax.income;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.YearBook;
import clenchbook.tax.billed.BilledBook;
import clenchbook.tax.journal.JournalEntry;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.page.Bases;
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
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * A year's income by the money and by the bill, added up on paper. Visits at 100.00 bear 20 % tax,
 * so that 120.00 are asked for.
 */
class IncomeTest {
  private static final Period YEAR =
      new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31));
  private static final TaxBasis CASH = new TaxBasis(true, true, Bases.CASH);
  private static final TaxBasis INVOICED = new TaxBasis(false, false, Bases.INVOICED);
  private static final RateTables RATES =
      WrittenRates.tables(
          "x/lines, work, line, 1, Receipts",
          "x/lines, tips, line, 6, Tips",
          "x/lines, refunds, line, 2, Returns",
          "x/lines, bad debts, line, 27, Bad debts");

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.CURRENCY, "GBP")
        .setting(Setting.TAX_NUMBER, "GB1")
        .tax("Code: S, Name: VAT, Rate %: 20")
        .work("Work: Trim, Tax: S, Price: 100");
  }

  private static String visit(String day) {
    return "Horse: Bess, Owner: Ruth, Work: Trim, Charge: list, Date: " + day;
  }

  private static String paid(String day, String cells) {
    return "Owner: Ruth, Date: " + day + ", " + cells;
  }

  private static Income income(
      WrittenBook book, List<BilledDocument> register, TaxBasis basis, boolean refundsApart) {
    Regime regime = WrittenRates.regime(refundsApart, true);
    YearEndInput input =
        new YearEndInput(
            book.jobs(),
            register,
            new TaxYear(regime, 2026, YEAR, false),
            Optional.empty(),
            RATES,
            StockValue.NONE);
    LineScheme lines =
        new LineScheme(regime, YEAR.last(), new clenchbook.tax.rates.RateLookup(RATES));
    return Income.of(
        input,
        BilledBook.of(book.jobs(), register),
        YEAR,
        basis,
        lines,
        IncomeLines.of(regime.codes()));
  }

  private static Income cash(WrittenBook book, String... months) {
    return income(book, register(book, months), CASH, true);
  }

  private static Income invoiced(WrittenBook book, String... months) {
    return income(book, register(book, months), INVOICED, true);
  }

  private static List<BilledDocument> register(WrittenBook book, String... months) {
    List<BilledDocument> register = List.of();
    for (String month : months) {
      register = YearBook.run(book, register, month);
    }
    return register;
  }

  /** Rows as {@code code day net tax}. */
  private static List<String> items(Income income) {
    return income.items().stream().map(IncomeTest::written).toList();
  }

  private static String written(LineItem item) {
    return item.code()
        + " "
        + item.date()
        + " "
        + item.net().toPlainString()
        + " "
        + item.tax().toPlainString();
  }

  private static List<String> parts(Income income) {
    return income.parts().entrySet().stream()
        .map(
            part ->
                part.getKey().word()
                    + ": "
                    + part.getValue().stream()
                        .map(item -> item.net().toPlainString())
                        .collect(Collectors.joining(" ")))
        .toList();
  }

  private static List<String> journal(Income income) {
    return income.journal().stream().map(IncomeTest::written).toList();
  }

  private static String written(JournalEntry entry) {
    return entry.date()
        + " "
        + entry.description()
        + ": "
        + entry.postings().stream()
            .map(posting -> posting.account() + " " + posting.amount().toPlainString())
            .collect(Collectors.joining(", "));
  }

  @Test
  void by_the_money_a_payment_counts_on_its_day_without_the_tax_within_it() {
    WrittenBook book =
        book()
            .visit(visit("2026-03-02"))
            .payment(paid("2026-04-10", "Amount: 60"))
            .payment(paid("2026-05-10", "Amount: 60"));
    Income found = cash(book, "2026-03");
    assertEquals(
        List.of("work 2026-04-10 50.00 10.00", "work 2026-05-10 50.00 10.00"), items(found));
    assertEquals(List.of("payments: 50.00 50.00"), parts(found));
    assertEquals(
        List.of(
            "2026-04-10 payment, Ruth: Bank and cash 60.00, Income: Receipts -50.00, Tax on sales"
                + " -10.00",
            "2026-05-10 payment, Ruth: Bank and cash 60.00, Income: Receipts -50.00, Tax on sales"
                + " -10.00"),
        journal(found));
    assertEquals(2, found.sales().size());
    assertEquals("S", found.sales().get(0).sold().taxCode());
  }

  @Test
  void by_the_bill_the_invoice_counts_and_the_money_only_moves_the_debt() {
    WrittenBook book = book().visit(visit("2026-03-02")).payment(paid("2026-04-10", "Amount: 60"));
    Income found = invoiced(book, "2026-03");
    assertEquals(List.of("work 2026-03-31 100.00 20.00"), items(found));
    assertEquals(List.of("invoices: 100.00"), parts(found));
    assertEquals(
        List.of(
            "2026-04-10 payment, Ruth: Bank and cash 60.00, Owed by owners -60.00",
            "2026-03-31 Invoice 2026-0001, Ruth: Owed by owners 120.00, Income: Receipts -100.00,"
                + " Tax on sales -20.00"),
        journal(found));
  }

  @Test
  void only_the_years_own_days_count() {
    WrittenBook book =
        book()
            .visit(visit("2025-12-02"))
            .visit(visit("2026-12-02"))
            .payment(paid("2025-12-31", "Amount: 60"))
            .payment(paid("2026-01-01", "Amount: 60"))
            .payment(paid("2026-12-31", "Amount: 60"))
            .payment(paid("2027-01-01", "Amount: 60"));
    assertEquals(
        List.of("work 2026-01-01 50.00 10.00", "work 2026-12-31 50.00 10.00"),
        items(cash(book, "2025-12", "2026-12")));
    assertEquals(
        List.of("work 2026-12-31 100.00 20.00"), items(invoiced(book, "2025-12", "2026-12")));
  }

  @Test
  void a_visit_before_the_register_counts_by_itself_and_one_that_waits_does_not() {
    WrittenBook book =
        book().visit(visit("2026-02-02")).visit(visit("2026-03-02")).visit(visit("2026-04-02"));
    Income found = invoiced(book, "2026-03");
    assertEquals(
        List.of("work 2026-02-02 100.00 20.00", "work 2026-03-31 100.00 20.00"), items(found));
    assertEquals(
        List.of("from visits before the register: 100.00", "invoices: 100.00"), parts(found));
    assertEquals(
        "2026-02-02 Visit before the register, Ruth: Owed by owners 120.00, Income: Receipts"
            + " -100.00, Tax on sales -20.00",
        journal(found).get(0));
  }

  @Test
  void a_credit_note_lowers_the_invoiced_income() {
    WrittenBook before = book().visit(visit("2026-03-02"));
    List<BilledDocument> register = register(before, "2026-03");
    WrittenBook after = book().visit(visit("2026-03-02").replace("list", "90"));
    register = YearBook.run(after, register, "2026-04");
    Income found = income(after, register, INVOICED, true);
    assertEquals(
        List.of(
            "work 2026-03-31 100.00 20.00",
            "work 2026-04-30 90.00 18.00",
            "work 2026-04-30 -100.00 -20.00"),
        items(found));
    assertEquals(List.of("credit notes: -100.00", "invoices: 100.00 90.00"), parts(found));
  }

  @Test
  void a_tip_is_income_without_tax_on_either_basis() {
    WrittenBook book = book().payment(paid("2026-04-10", "Amount: 5, Kind: tip"));
    assertEquals(List.of("tips 2026-04-10 5.00 0.00"), items(cash(book)));
    assertEquals(List.of("tips 2026-04-10 5.00 0.00"), items(invoiced(book)));
    assertEquals(List.of("tips: 5.00"), parts(cash(book)));
    assertEquals(
        List.of("2026-04-10 tip, Ruth: Bank and cash 5.00, Income: Tips -5.00"),
        journal(cash(book)));
  }

  @Test
  void money_given_back_stands_apart_or_against_the_work() {
    WrittenBook book =
        book()
            .visit(visit("2026-03-02"))
            .payment(paid("2026-04-10", "Amount: 120"))
            .payment(paid("2026-04-20", "Amount: 24, Kind: refund"));
    List<BilledDocument> register = register(book, "2026-03");
    Income apart = income(book, register, CASH, true);
    assertEquals("refunds 2026-04-20 20.00 4.00", items(apart).get(1));
    Income against = income(book, register, CASH, false);
    assertEquals("refunds 2026-04-20 -20.00 -4.00", items(against).get(1));
    assertEquals(List.of("payments: 100.00", "refunds: -20.00"), parts(against));
    assertEquals(
        "2026-04-20 refund, Ruth: Bank and cash -24.00, Income: Returns 20.00, Tax on sales 4.00",
        journal(apart).get(1));
  }

  @Test
  void what_was_given_up_is_no_income_in_cash_and_a_cost_of_bad_debts_else() {
    WrittenBook book =
        book()
            .visit(visit("2026-03-02"))
            .payment(paid("2026-04-10", "Amount: 120, Kind: written off"));
    Income cash = cash(book, "2026-03");
    assertEquals(List.of(), items(cash));
    assertEquals(List.of(), journal(cash));
    assertEquals("120.00", cash.writtenOff().toPlainString());
    Income invoiced = invoiced(book, "2026-03");
    assertEquals(
        List.of("bad debts 2026-04-10 100.00 20.00", "work 2026-03-31 100.00 20.00"),
        items(invoiced));
    assertEquals(
        "2026-04-10 written off, Ruth: Cost: Bad debts 100.00, Tax on bad debts 20.00, Owed by"
            + " owners -120.00",
        journal(invoiced).get(0));
  }

  @Test
  void money_at_the_truck_and_on_account_is_said_to_be() {
    WrittenBook book =
        book()
            .visit(visit("2026-03-02") + ", Paid: 60")
            .payment(paid("2026-03-20", "Amount: 60, Kind: deposit"));
    Income found = cash(book, "2026-03");
    assertEquals(List.of("received on account: 50.00", "taken at the truck: 50.00"), parts(found));
    assertEquals(
        "2026-03-02 paid at the truck, Ruth: Bank and cash 60.00, Income: Receipts -50.00, Tax on"
            + " sales -10.00",
        journal(found).get(0));
  }

  @Test
  void money_that_no_bill_takes_is_income_without_tax_and_listed() {
    WrittenBook book = book().visit(visit("2026-03-02")).payment(paid("2026-04-10", "Amount: 150"));
    Income found = cash(book, "2026-03");
    assertEquals(List.of("work 2026-04-10 130.00 20.00"), items(found));
    assertEquals(List.of("matched with no bill: 30.00", "payments: 130.00"), parts(found));
    assertEquals(
        List.of(), parts(invoiced(book)).stream().filter(p -> p.contains("no bill")).toList());
  }

  /** 120 paid in 2025 for work of 2026: its 20 of tax are taken out of 2026's income. */
  @Test
  void tax_within_money_held_since_an_earlier_year_is_taken_out_by_the_work_it_paid() {
    WrittenBook book = book().payment(paid("2025-12-20", "Amount: 120")).visit(visit("2026-03-02"));
    Income found = cash(book, "2026-03");
    assertEquals(List.of("work 2026-03-02 -20.00 20.00"), items(found));
    assertEquals(List.of("tax within money held since an earlier year: -20.00"), parts(found));
    assertEquals(
        List.of(
            "2026-03-02 tax within money held on account, Ruth: Income: Receipts 20.00, Tax on"
                + " sales -20.00"),
        journal(found));
    assertEquals(1, found.sales().size());
    Income invoiced = invoiced(book, "2026-03");
    assertEquals(List.of("work 2026-03-31 100.00 20.00"), items(invoiced));
  }

  /** Half of 100.00 is taxed: 10.00 on 50.00. A third of the 110.00 pays a third of each. */
  @Test
  void a_payment_pays_each_tax_code_its_share() {
    WrittenBook book =
        book()
            .work("Work: Half, Tax: S, Price: 100, Taxed part: 0.5")
            .visit("Date: 2026-03-02, Horse: B, Owner: Ruth, Work: Half, Charge: list")
            .payment(paid("2026-04-10", "Amount: 36.67"));
    Income found = cash(book, "2026-03");
    assertEquals(List.of("work 2026-04-10 33.34 3.33"), items(found));
    assertEquals(
        List.of("S 16.67 3.33", " 16.67 0.00"),
        found.sales().stream()
            .map(
                sale ->
                    sale.sold().taxCode()
                        + " "
                        + sale.item().net().toPlainString()
                        + " "
                        + sale.item().tax().toPlainString())
            .toList());
  }

  @Test
  void the_receipts_of_the_year_are_kept_oldest_first() {
    WrittenBook book =
        book()
            .payment(paid("2026-05-10", "Amount: 2"))
            .payment(paid("2026-04-10", "Amount: 1"))
            .payment(paid("2025-04-10", "Amount: 3"))
            .visit(visit("2026-04-10") + ", Paid: 0")
            .visit(visit("2026-04-11") + ", Paid: 4");
    assertEquals(
        List.of("2026-04-10 1 false", "2026-04-11 4.00 true", "2026-05-10 2 false"),
        cash(book).receipts().stream()
            .map(
                receipt ->
                    receipt.date()
                        + " "
                        + receipt.amount().toPlainString()
                        + " "
                        + receipt.atTruck())
            .toList());
  }
}

package clenchbook.tax.income;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.Accounts;
import clenchbook.billing.BillingDecision;
import clenchbook.billing.MonthBilling;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.YearBook;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Balances and the year's end say alike whose money it is and which way it went. Worked by hand
 * from the stated rules (common practice, no source).
 */
class WhoseMoneyTest {
  /** Schedule C (Form 1040) of the United States, line 1: gross receipts or sales. */
  private static final String RECEIPTS = "1";

  private static final YearMonth MARCH = YearMonth.of(2026, 3);

  /** Ruth bears tax, Adam does not; Bess is theirs, 60 to 40. A visit is 100, with tax 112. */
  private static WrittenBook book(String ruthsBillTo) {
    return new WrittenBook()
        .setting(Setting.TAX_REGIME, "us")
        .setting(Setting.CURRENCY, "USD")
        // The cash basis needs a sheet Payments.
        .payment("Date: 2020-01-01, Owner: Rita, Amount: 1, Kind: tip")
        .tax("Code: S, Name: Sales, Rate %: 20, Kind: standard")
        .work("Work: Set, Tax: S, Price: 100")
        .owner("Owner: Adam, Tax exempt: yes")
        .owner("Owner: Rita")
        .owner("Owner: Ruth")
        .horse("Horse: Bess, Owner: Ruth, Share %: 60, Bill to: " + ruthsBillTo)
        .horse("Horse: Bess, Owner: Adam, Share %: 40");
  }

  private static WrittenBook paid(String ruthsBillTo, String owner) {
    return book(ruthsBillTo)
        .visit("Date: 2026-03-10, Horse: Bess, Work: Set, Charge: list, Paid: 60, Owner: " + owner);
  }

  /** Who paid what in March, by the balances. */
  private static Map<String, String> balances(WrittenBook book) {
    BillingDecision decision =
        MonthBilling.decide(
            book.jobs(), List.of(), new BillingOptions(MARCH, false, Optional.empty(), false));
    Map<String, String> paid = new TreeMap<>();
    Accounts.of(book.jobs(), decision, MARCH.atDay(1), MARCH.atEndOfMonth()).stream()
        .filter(account -> account.paid().signum() != 0)
        .forEach(account -> paid.put(account.owner(), account.paid().toPlainString()));
    return paid;
  }

  /** Who paid what in the year, by the rows behind the tax summary. */
  private static Map<String, String> income(WrittenBook book) {
    Map<String, BigDecimal> gross = new TreeMap<>();
    lines(book).rows().stream()
        .filter(row -> row.get(0).equals(RECEIPTS))
        .forEach(row -> gross.merge(row.get(4), new BigDecimal(row.get(7)), BigDecimal::add));
    Map<String, String> paid = new TreeMap<>();
    gross.forEach((who, amount) -> paid.put(who, amount.toPlainString()));
    return paid;
  }

  private static FigureTable lines(WrittenBook book) {
    return YearBook.table(
        YearBook.end(book, YearBook.run(book, List.of(), "2026-03"), 2026), "lines");
  }

  private static BigDecimal tax(WrittenBook book) {
    return lines(book).rows().stream()
        .filter(row -> row.get(0).equals(RECEIPTS))
        .map(row -> new BigDecimal(row.get(6)))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Ruth's 36 pay a bill of 72 with 12 of tax: 6. Adam's 24 pay a bill without. */
  @Test
  void what_a_row_without_an_owner_brings_is_split_by_shares() {
    WrittenBook book = paid("", "");
    Map<String, String> byHand = Map.of("Adam", "24.00", "Ruth", "36.00");
    assertEquals(byHand, balances(book));
    assertEquals(byHand, income(book));
    assertEquals(new BigDecimal("6.00"), tax(book));
  }

  @Test
  void what_a_row_brings_that_names_a_sharer_is_that_sharers() {
    WrittenBook book = paid("", "Adam");
    assertEquals(Map.of("Adam", "60.00"), balances(book));
    assertEquals(Map.of("Adam", "60.00"), income(book));
  }

  @Test
  void under_bill_to_it_is_the_payers() {
    WrittenBook unnamed = paid("Rita", "");
    Map<String, String> byHand = Map.of("Adam", "24.00", "Rita", "36.00");
    assertEquals(byHand, balances(unnamed));
    assertEquals(byHand, income(unnamed));
    WrittenBook named = paid("Rita", "Ruth");
    assertEquals(Map.of("Rita", "60.00"), balances(named));
    assertEquals(Map.of("Rita", "60.00"), income(named));
  }

  /** Kept as a credit without a name, as a payment without an owner is. */
  @Test
  void what_a_cancelled_row_brings_with_nobody_to_bill_is_not_lost() {
    WrittenBook book =
        book("").visit("Date: 2026-03-10, Horse: Moss, Work: Set, Paid: 30, Reason: cancelled");
    assertEquals(Map.of("", "30.00"), balances(book));
    assertEquals(Map.of("", "30.00"), income(book));
  }

  /** 120 in, 10 back, 5 in with a minus that counts for nothing: 115. */
  @Test
  void the_size_counts_by_its_kind_and_a_minus_for_nothing() {
    WrittenBook book =
        book("")
            .payment("Date: 2026-03-11, Owner: Ruth, Amount: 120")
            .payment("Date: 2026-03-12, Owner: Ruth, Amount: -10, Kind: refund")
            .payment("Date: 2026-03-13, Owner: Ruth, Amount: -5");
    assertEquals(Map.of("Ruth", "115.00"), balances(book));
    assertEquals(
        new BigDecimal("115.00"),
        YearBook.table(YearBook.end(book, List.of(), 2026), "reconciliation").rows().stream()
            .filter(row -> row.get(1).startsWith("payments, deposits and refunds"))
            .map(row -> new BigDecimal(row.get(2)))
            .findFirst()
            .orElseThrow());
  }
}

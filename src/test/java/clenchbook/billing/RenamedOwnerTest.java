package clenchbook.billing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.YearBook;
import clenchbook.tax.YearEndFindings;
import clenchbook.texts.InEnglish;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** An owner who is called otherwise now has one account still; worked by hand. */
class RenamedOwnerTest {
  private static final YearMonth OCTOBER = YearMonth.of(2026, 10);

  private static WrittenBook before() {
    return rows(new WrittenBook().owner("Owner: Ruth Alder"), "Ruth Alder");
  }

  /** The farrier has changed Owners and Horses; the rows of Visits and Payments stand as typed. */
  private static WrittenBook after() {
    return rows(
        new WrittenBook().owner("Owner: Ruth Finch, Formerly: Ruth Adler; Ruth Alder"),
        "Ruth Finch");
  }

  private static WrittenBook rows(WrittenBook book, String now) {
    return unpaid(book, now)
        .payment("Date: 2026-09-20, Owner: Ruth Alder, Amount: 25")
        .payment("Date: 2026-10-20, Owner: " + now + ", Amount: 15, Invoice: 2026-0002");
  }

  private static WrittenBook unpaid(WrittenBook book, String now) {
    return book.setting(Setting.CURRENCY, "GBP")
        .setting(Setting.TAX_REGIME, "us")
        .horse("Horse: Bess, Owner: " + now + ", Share %: 50")
        .horse("Horse: Bess, Owner: Adam, Share %: 50")
        .horse("Horse: Jet, Owner: " + now)
        .visit("Date: 2026-09-07, Horse: Bess, Work: Trim, Charge: 80, Paid: 10")
        .visit("Date: 2026-09-08, Horse: Jet, Owner: Ruth Alder, Work: Trim, Charge: 30")
        .visit("Date: 2026-10-05, Horse: Jet, Owner: ruth alder, Work: Trim, Charge: 50")
        .visit("Date: 2026-10-06, Horse: Jet, Work: Trim, Charge: 20");
  }

  @Test
  void invoices_payments_and_balance_of_the_earlier_name_are_this_owners() {
    Ledger ledger = new Ledger().run(before(), "2026-09").sendMonth("2026-09");
    ledger.run(after(), "2026-10");
    // September: 40 and 30 billed, 5 at the truck and 25 paid. October: 70 billed, 15 paid.
    Account account = ledger.account("Ruth Finch", OCTOBER);
    assertEquals(new BigDecimal("40.00"), account.broughtForward());
    assertEquals(new BigDecimal("70.00"), account.invoiced());
    assertEquals(new BigDecimal("15.00"), account.paid());
    assertEquals(new BigDecimal("95.00"), account.balance());
    assertEquals(List.of(), ledger.last().differences());
    assertEquals(
        List.of(
            "2026-0001 Adam 40.00 issued",
            "2026-0002 Ruth Alder 70.00 issued",
            "2026-0003 Ruth Finch 70.00 draft"),
        ledger.documents(),
        "what is out bears the name it was issued under");
    assertEquals(List.of("Adam", "Ruth Finch"), ledger.accounts(OCTOBER));
  }

  @Test
  void a_draft_goes_on_under_its_number_and_the_new_name() {
    WrittenBook before = unpaid(new WrittenBook().owner("Owner: Ruth Alder"), "Ruth Alder");
    WrittenBook after =
        unpaid(new WrittenBook().owner("Owner: Ruth Finch, Formerly: Ruth Alder"), "Ruth Finch");
    Ledger ledger = new Ledger().run(before, "2026-09").run(after, "2026-09");
    assertEquals(
        List.of("2026-0001 Adam 40.00 draft", "2026-0002 Ruth Finch 70.00 draft"),
        ledger.documents());
  }

  @Test
  void an_earlier_visit_joins_the_invoice_under_the_new_name() {
    Ledger ledger = new Ledger().run(before(), "2026-09").sendMonth("2026-09");
    WrittenBook changed = after().visit("Date: 2026-09-09, Horse: Jet, Work: Shoe, Charge: 5");
    ledger.includingEarlier(changed, "2026-10");
    assertEquals("2026-0003 Ruth Finch 75.00 draft", ledger.documents().get(2));
  }

  @Test
  void the_years_end_knows_one_owner_and_ends_in_nothing() {
    List<BilledDocument> september = YearBook.run(before(), List.of(), "2026-09");
    List<BilledDocument> register = YearBook.run(after(), september, "2026-10");
    YearEndFindings year = YearBook.end(after(), register, 2026);
    TreeSet<String> who = new TreeSet<>();
    YearBook.table(year, "lines").rows().stream()
        .filter(row -> row.get(0).equals("1"))
        .forEach(row -> who.add(row.get(4)));
    assertEquals(new TreeSet<>(List.of("Adam", "Ruth Finch")), who);
    YearBook.table(year, "reconciliation").rows().stream()
        .filter(row -> row.get(1).equals("left over"))
        .forEach(row -> assertEquals("0.00", row.get(2), row.toString()));
  }

  @Test
  void a_name_with_a_row_of_its_own_is_nobodys_earlier_one() {
    WrittenBook both =
        before().owner("Owner: Ruth Finch, Formerly: Ruth Alder").owner("Owner: Zoe, Formerly: Zo");
    both.owner("Owner: Zara, Formerly: Zo");
    List<String> problems =
        both.jobs().problems().stream().map(problem -> InEnglish.said(problem.problem())).toList();
    assertTrue(problems.contains("Ruth Alder has a row of its own, which counts"));
    assertTrue(problems.contains("Zo is Zoe's earlier name already"), problems::toString);
    assertEquals("Ruth Alder", both.jobs().index().ownerName("ruth alder"));
    assertEquals("Zoe", both.jobs().index().ownerName("zo"));
  }
}

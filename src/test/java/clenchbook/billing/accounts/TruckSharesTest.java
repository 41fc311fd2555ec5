package clenchbook.billing.accounts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import org.junit.jupiter.api.Test;

/** Whose money it is that was taken at the truck; shares worked out on paper. */
class TruckSharesTest {
  private static WrittenBook shared() {
    return new WrittenBook()
        .horse("Horse: Bess, Owner: Ruth, Share %: 50")
        .horse("Horse: Bess, Owner: Adam, Share %: 30")
        .horse("Horse: Bess, Owner: Zoe, Share %: 20");
  }

  private static String shares(WrittenBook book) {
    Jobs jobs = book.jobs();
    return TruckShares.of(jobs.all().get(0), jobs.index()).toString();
  }

  @Test
  void a_shared_horses_money_is_split_as_it_is_shared() {
    WrittenBook book = shared().visit("Date: 2026-10-05, Horse: Bess, Work: Trim, Paid: 33.33");
    assertEquals("{Ruth=16.66, Adam=10.00, Zoe=6.67}", shares(book));
  }

  @Test
  void the_sharer_whom_the_row_names_has_paid_it_all() {
    WrittenBook book =
        shared().visit("Date: 2026-10-05, Horse: Bess, Owner: adam, Work: Trim, Paid: 33.33");
    assertEquals("{Adam=33.33}", shares(book));
  }

  @Test
  void under_bill_to_the_money_is_the_payers() {
    WrittenBook book =
        new WrittenBook()
            .horse("Horse: Bess, Owner: Ruth, Bill to: Adam")
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Paid: 20");
    assertEquals("{Adam=20.00}", shares(book));
  }

  @Test
  void nothing_taken_is_nobodys() {
    WrittenBook book = shared().visit("Date: 2026-10-05, Horse: Bess, Work: Trim, Paid: 0");
    assertEquals("{}", shares(book));
  }
}

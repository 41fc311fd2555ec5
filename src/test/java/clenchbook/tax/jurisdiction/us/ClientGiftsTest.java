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

class ClientGiftsTest {

  /** IRS Publication 463, chapter 3, Bob Jones: three baskets at 80 for three people count 75. */
  @Test
  void a_gift_counts_up_to_twenty_five() {
    WrittenBook book = new WrittenBook().setting(Setting.TAX_REGIME, "us");
    for (int day = 1; day <= 3; day++) {
      book.purchase(
          "Date: 2025-12-0" + day + ", Supplier: Basket Shop, Category: Client gifts, Gross: 80");
    }
    YearEndFindings findings = YearBook.end(book, List.of(), 2025);
    assertEquals(Optional.of("75.00"), YearBook.amount(findings, "27b"));
    assertEquals(
        Optional.of("165.00"),
        YearBook.amount(findings, "not counted: client gifts above the limit"));
    assertTrue(says(findings, "up to 25 a person"));
  }

  @Test
  void a_small_gift_counts_in_full() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "us")
            .purchase("Date: 2025-12-01, Supplier: Basket Shop, Category: Gift, Gross: 12.50");
    YearEndFindings findings = YearBook.end(book, List.of(), 2025);
    assertEquals(Optional.of("12.50"), YearBook.amount(findings, "27b"));
  }
}

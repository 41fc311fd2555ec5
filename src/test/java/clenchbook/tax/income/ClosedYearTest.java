package clenchbook.tax.income;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.YearBook;
import clenchbook.tax.YearEndFindings;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Money received in a year pays work of that year or before: later rows change no closed year. */
class ClosedYearTest {

  /** 120 received on 20 March for a visit of 50 and 10 of tax; 60 are held on account. */
  private static WrittenBook book(boolean laterVisit, boolean laterPayment) {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "uk")
            .setting(Setting.TAX_NUMBER, "GB123456789")
            .tax("Code: S, Name: Standard, Rate %: 20, Kind: standard")
            .work("Work: Set, Tax: S, Price: 50")
            .visit("Date: 2026-03-10, Horse: Bess, Owner: Ash, Work: Set")
            .payment("Date: 2026-03-20, Owner: Ash, Amount: 120")
            .payment("Date: 2026-03-21, Owner: Elm, Amount: 50");
    if (laterVisit) {
      book.visit("Date: 2026-05-10, Horse: Bess, Owner: Ash, Work: Set");
    }
    return laterPayment ? book.payment("Date: 2026-06-01, Owner: Ash, Amount: 60") : book;
  }

  private static Optional<String> turnover(WrittenBook book, int year) {
    return YearBook.amount(YearBook.end(book, List.of(), year), "15");
  }

  /** By hand: 120 less 10 of tax, and 50 that no bill takes, are 160. */
  @Test
  void a_visit_typed_later_leaves_the_closed_year_as_it_was() {
    assertEquals(Optional.of("160.00"), turnover(book(false, false), 2025));
    assertEquals(Optional.of("160.00"), turnover(book(true, false), 2025));
    assertEquals(Optional.of("160.00"), turnover(book(true, true), 2025));
  }

  /** By hand: the money held pays the visit of May, so its 10 of tax is taken out in that year. */
  @Test
  void what_was_held_pays_the_next_years_bill_and_gives_up_its_tax_there() {
    assertEquals(Optional.of("-10.00"), turnover(book(true, false), 2026));
    YearEndFindings next = YearBook.end(book(true, true), List.of(), 2026);
    assertEquals(Optional.of("50.00"), YearBook.amount(next, "15"));
    assertEquals(
        Optional.of("-10.00"),
        YearBook.amount(next, "15 tax within money held since an earlier year"));
    YearBook.table(next, "reconciliation").rows().stream()
        .filter(row -> row.get(1).equals("left over"))
        .forEach(row -> assertEquals("0.00", row.get(2), row.toString()));
    assertEquals(
        0,
        YearBook.column(YearBook.table(next, "journal"), "debit")
            .compareTo(YearBook.column(YearBook.table(next, "journal"), "credit")));
  }

  /** A credit note of a later year takes nothing out of what an earlier one received. */
  @Test
  void a_later_correction_leaves_the_closed_year_as_it_was() {
    WrittenBook before = correction("120");
    WrittenBook after = correction("60");
    var january = YearBook.run(before, List.of(), "2025-12");
    Optional<String> then = YearBook.amount(YearBook.end(before, january, 2025), "1");
    var corrected = YearBook.run(after, january, "2026-01");
    assertEquals(then, YearBook.amount(YearBook.end(after, corrected, 2025), "1"));
    assertEquals(Optional.of("100.00"), then);
  }

  private static WrittenBook correction(String charge) {
    return new WrittenBook()
        .setting(Setting.TAX_REGIME, "us")
        .tax("Code: S, Name: Sales, Rate %: 20, Kind: standard")
        .work("Work: Set, Tax: S, Price: 100")
        .visit("Date: 2025-12-10, Horse: Bess, Owner: Ash, Work: Set, Charge: " + charge)
        .payment("Date: 2025-12-20, Owner: Ash, Amount: 120");
  }
}

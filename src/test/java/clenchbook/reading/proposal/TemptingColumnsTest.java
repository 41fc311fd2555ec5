package clenchbook.reading.proposal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.BookReader;
import clenchbook.reading.ReadOptions;
import clenchbook.reading.SmallBook;
import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Columns that look like what they are not get no meaning, or none that is sure. */
class TemptingColumnsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final int[] PRICES = {45, 110, 70, 85, 45, 110, 60};
  private static final String[] HORSES = {"Bess", "Jet", "Dot", "Fig", "Moss"};
  private static final String[] OWNERS = {"Ruth Ashby", "Ivo Penhale", "Joan Tarrant"};

  @TempDir Path folder;

  private static int price(int row) {
    return PRICES[row % PRICES.length];
  }

  private static SmallBook.Styled money(String amount) {
    return new SmallBook.Styled(amount, "#,##0.00");
  }

  /** Twenty visits with some headings of their own behind the usual four. */
  @SafeVarargs
  private List<Proposal> visits(String headings, IntFunction<Object>... columns)
      throws IOException {
    SmallBook book = SmallBook.visits("Date|Owner|Horse|Work|" + headings);
    for (int row = 0; row < 20; row++) {
      Object[] cells = new Object[4 + columns.length];
      cells[0] = DAY.plusDays(row);
      cells[1] = OWNERS[row % 5 % 3];
      cells[2] = HORSES[row % 5];
      cells[3] = price(row) > 50 ? "Full set" : "Trim";
      for (int at = 0; at < columns.length; at++) {
        cells[4 + at] = columns[at].apply(row);
      }
      book.visit(cells);
    }
    return BookReader.propose(book.write(folder), ReadOptions.of(Locale.UK));
  }

  private static Proposal of(List<Proposal> rows, String mine) {
    return rows.stream().filter(row -> row.mine().equals(mine)).findFirst().orElseThrow();
  }

  private static String means(List<Proposal> rows) {
    return String.join(",", rows.stream().map(Proposal::means).toList());
  }

  @Test
  void a_total_beside_a_price_is_left_open() throws IOException {
    List<Proposal> rows =
        visits(
            "Price|VAT|Total|Amount due",
            row -> money(price(row) + ""),
            row -> money(price(row) * 0.2 + ""),
            row -> money(price(row) * 1.2 + ""),
            row -> money(price(row) * 1.2 + ""));
    assertEquals(",,", means(rows));
  }

  @Test
  void a_lone_total_is_the_charge_but_never_ninety_sure() throws IOException {
    Proposal total = of(visits("Total", row -> money(price(row) + "")), "Total");
    assertEquals("Charge", total.means());
    assertTrue(total.sure() < 90, total.toString());
  }

  @Test
  void of_two_sums_of_which_one_is_the_other_with_tax_neither_is_taken() throws IOException {
    List<Proposal> rows =
        visits(
            "Xq|Total", row -> BigDecimal.valueOf(price(row)), row -> money(price(row) * 1.2 + ""));
    assertEquals(",", means(rows));
  }

  @Test
  void a_balance_that_runs_on_is_no_price() throws IOException {
    int[] sum = {0};
    List<Proposal> rows =
        visits(
            "Quid|So far",
            row -> money(price(row) + ""),
            row -> money((sum[0] += price(row)) + ""));
    assertEquals("Charge", of(rows, "Quid").means());
    assertEquals("", of(rows, "So far").means());
  }

  @Test
  void phones_invoice_numbers_and_mileage_mean_nothing() throws IOException {
    List<Proposal> rows =
        visits(
            "Mob.|Inv.|Miles there|Ref",
            row -> "07700 9001" + (10 + row),
            row -> BigDecimal.valueOf(1001L + row),
            row -> BigDecimal.valueOf(7 + row * 5 % 31),
            row -> "A-" + (200 + row));
    assertEquals("", means(rows).replace(",", ""), rows.toString());
  }

  @Test
  void plain_numbers_that_may_be_money_or_minutes_are_left_open() throws IOException {
    List<Proposal> rows =
        visits(
            "Xq|Zorp",
            row -> BigDecimal.valueOf(price(row)),
            row -> BigDecimal.valueOf(20 + row % 4 * 15));
    assertEquals(",", means(rows), rows.toString());
  }

  @Test
  void marked_money_and_marked_minutes_are_told_apart() throws IOException {
    List<Proposal> rows =
        visits(
            "Zorp|Xq",
            row -> LocalTime.of(0, 20 + row % 4 * 10),
            row -> new SmallBook.Styled(price(row) + "", "£#,##0.00"));
    assertEquals("Total min", of(rows, "Zorp").means());
    assertEquals("Charge", of(rows, "Xq").means());
    assertTrue(rows.stream().allMatch(row -> row.sure() < 90), rows.toString());
  }

  @Test
  void a_time_of_day_is_no_length_of_time() throws IOException {
    assertEquals("", means(visits("Got there", row -> LocalTime.of(8 + row % 9, 15))));
  }

  @Test
  void the_day_of_the_visit_is_not_the_day_when_it_is_due() throws IOException {
    SmallBook book = SmallBook.visits("Payment due|Did it|Owner|Horse|Work");
    for (int row = 0; row < 20; row++) {
      book.visit(
          DAY.plusDays(row + 14L), DAY.plusDays(row), OWNERS[row % 3], HORSES[row % 5], "Trim");
    }
    List<Proposal> rows = BookReader.propose(book.write(folder), ReadOptions.of(Locale.UK));
    assertEquals("", of(rows, "Payment due").means());
    assertEquals("Date", of(rows, "Did it").means());
  }

  @Test
  void of_two_columns_of_days_without_a_telling_name_neither_is_taken() throws IOException {
    SmallBook book = SmallBook.visits("Xq|Zorp|Owner|Horse|Work");
    for (int row = 0; row < 20; row++) {
      book.visit(
          DAY.plusDays(row + 14L), DAY.plusDays(row), OWNERS[row % 3], HORSES[row % 5], "Trim");
    }
    List<Proposal> rows = BookReader.propose(book.write(folder), ReadOptions.of(Locale.UK));
    assertEquals(",", means(rows), rows.toString());
  }

  @Test
  void two_columns_called_alike_get_no_meaning() throws IOException {
    List<Proposal> rows =
        visits("Quid|QUID", row -> money(price(row) + ""), row -> money(price(row) + ""));
    assertEquals("", means(rows));
    assertEquals("several columns are called so", InEnglish.said(rows.get(0).why()));
  }
}

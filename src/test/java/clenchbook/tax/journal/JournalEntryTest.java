package clenchbook.tax.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import clenchbook.tax.lines.LineHead;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Double entry: debits and credits of an entry are equal (Pacioli, Summa, 1494; from memory). */
class JournalEntryTest {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 5);

  private static JournalEntry entry(
      LocalDate day, String description, String sheet, int row, String debit, String credit) {
    return JournalEntry.of(
        day,
        description,
        sheet,
        row,
        Posting.debit("Bank", new BigDecimal(debit)),
        Posting.credit("Income", new BigDecimal(credit)));
  }

  @Test
  void an_entry_balances_and_bears_no_sides_of_nothing() {
    JournalEntry sound =
        JournalEntry.of(
            DAY,
            "paid, Ruth",
            "Payments",
            2,
            Posting.debit("Bank", new BigDecimal("120.00")),
            Posting.credit("Income", new BigDecimal("100.00")),
            Posting.credit("Tax", new BigDecimal("20.00")),
            Posting.credit("Rest", new BigDecimal("0.00")));
    assertEquals(
        List.of("Bank 120.00", "Income -100.00", "Tax -20.00"),
        sound.postings().stream()
            .map(posting -> posting.account() + " " + posting.amount())
            .toList());
  }

  @Test
  void one_out_of_balance_is_refused_by_how_much() {
    assertEquals(
        "paid is out of balance by 0.01",
        assertThrows(
                IllegalArgumentException.class,
                () -> entry(DAY, "paid", "Payments", 2, "20.01", "20.00"))
            .getMessage());
  }

  @Test
  void accounts_take_the_names_that_a_country_gives_them() {
    JournalEntry named =
        entry(DAY, "paid", "Payments", 2, "5", "5").renamed(Map.of("Income", "8400"));
    assertEquals(List.of("Bank", "8400"), named.postings().stream().map(Posting::account).toList());
    assertEquals("paid", named.description());
  }

  @Test
  void entries_stand_by_day_sheet_row_and_description() {
    List<JournalEntry> sorted =
        Stream.of(
                entry(DAY, "b", "Payments", 3, "1", "1"),
                entry(DAY, "a", "Visits", 2, "1", "1"),
                entry(DAY, "a", "Payments", 3, "1", "1"),
                entry(DAY, "z", "Payments", 2, "1", "1"),
                entry(DAY.minusDays(1), "z", "Visits", 9, "1", "1"))
            .sorted(JournalEntry.BY_DATE)
            .toList();
    assertEquals(
        List.of(
            "4 Visits 9 z", "5 Payments 2 z", "5 Payments 3 a", "5 Payments 3 b", "5 Visits 2 a"),
        sorted.stream()
            .map(
                entry ->
                    entry.date().getDayOfMonth()
                        + " "
                        + entry.sheet()
                        + " "
                        + entry.row()
                        + " "
                        + entry.description())
            .toList());
  }

  @Test
  void income_and_cost_stand_under_the_lines_own_name() {
    LineHead head = new LineHead("1", "Gross receipts", "a test");
    assertEquals("Income: Gross receipts", AccountNames.income(head));
    assertEquals("Cost: Gross receipts", AccountNames.cost(head));
  }
}

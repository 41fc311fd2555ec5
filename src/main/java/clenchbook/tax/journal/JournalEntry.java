package clenchbook.tax.journal;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * One entry of the double-entry journal; its debits and credits are equal, or it cannot be made.
 *
 * @param date the day
 * @param description what happened
 * @param sheet the sheet of the row behind it; {@code register} for an invoice, {@code tax-summary}
 *     for a year's figure
 * @param row the row; 0 where there is none
 * @param postings its sides, those of nothing left out
 */
public record JournalEntry(
    LocalDate date, String description, String sheet, int row, List<Posting> postings) {
  public static final Comparator<JournalEntry> BY_DATE =
      Comparator.comparing(JournalEntry::date)
          .thenComparing(JournalEntry::sheet)
          .thenComparingInt(JournalEntry::row)
          .thenComparing(JournalEntry::description);

  /** Drops sides of nothing; refuses an entry that does not balance. */
  public JournalEntry {
    postings = postings.stream().filter(posting -> posting.amount().signum() != 0).toList();
    BigDecimal balance =
        postings.stream().map(Posting::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    if (balance.signum() != 0) {
      throw new IllegalArgumentException(description + " is out of balance by " + balance);
    }
  }

  /** The same with accounts that bear another name, by the name they have here. */
  public JournalEntry renamed(Map<String, String> names) {
    return new JournalEntry(
        date,
        description,
        sheet,
        row,
        postings.stream()
            .map(
                posting ->
                    new Posting(
                        names.getOrDefault(posting.account(), posting.account()), posting.amount()))
            .toList());
  }

  public static JournalEntry of(
      LocalDate date, String description, String sheet, int row, Posting... postings) {
    return new JournalEntry(date, description, sheet, row, List.of(postings));
  }
}

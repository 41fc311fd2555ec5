package clenchbook.tax.rates;

import clenchbook.tax.YearEnd;
import clenchbook.values.Period;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Looks rates up for one run and remembers which were used and which were missing, so that the
 * report can name both. Mutable; belongs to one call of {@link YearEnd#of} and never leaves it.
 */
public final class RateLookup {
  private final RateTables tables;
  private final Set<MissingRate> missing = new TreeSet<>();
  private final TreeMap<String, Rate> used = new TreeMap<>();

  public RateLookup(RateTables tables) {
    this.tables = tables;
  }

  /** The row in force, remembered as used; empty and remembered as missing where there is none. */
  public Optional<Rate> find(String table, String code, LocalDate day) {
    Optional<Rate> found = tables.find(table, code, day);
    found.ifPresentOrElse(this::remember, () -> missing.add(new MissingRate(table, code, day)));
    return found;
  }

  /** The row in force where there is one; its absence is no fault. */
  public Optional<Rate> ask(String table, String code, LocalDate day) {
    Optional<Rate> found = tables.find(table, code, day);
    found.ifPresent(this::remember);
    return found;
  }

  /** All rows in force on any day of a period, none of them remembered. */
  public List<Rate> within(String table, Period period) {
    return tables.table(table).rows().stream()
        .filter(row -> !row.from().isAfter(period.last()) && !row.to().isBefore(period.first()))
        .toList();
  }

  /** All rows in force, none of them remembered. */
  public List<Rate> inForce(String table, LocalDate day) {
    return tables.table(table).inForce(day);
  }

  /** Whether there is such a table at all. */
  public boolean hasRows(String table) {
    return !tables.table(table).rows().isEmpty();
  }

  /** Every row of a code, whatever the day, oldest first; none of them remembered. */
  public List<Rate> all(String table, String code) {
    return tables.table(table).rows().stream().filter(row -> row.code().equals(code)).toList();
  }

  /**
   * The rows of a table of words, one for each code, none of them remembered. Words do not expire:
   * where no row of a code is in force on the day the last one before it counts, else the first
   * after it.
   */
  public List<Rate> words(String table, LocalDate day) {
    TreeMap<String, Rate> words = new TreeMap<>();
    for (Rate row : tables.table(table).rows()) {
      words.merge(row.code(), row, (kept, next) -> next.from().isAfter(day) ? kept : next);
    }
    return List.copyOf(words.values());
  }

  /** Remembers that a whole table has nothing for a day. */
  public void lacks(String table, LocalDate day) {
    missing.add(new MissingRate(table, MissingRate.ALL, day));
  }

  /**
   * Whether the table has rows, and all of them begin after {@code day}: the thing is older than
   * the table.
   */
  public boolean beginsAfter(String table, LocalDate day) {
    List<Rate> rows = tables.table(table).rows();
    return !rows.isEmpty() && rows.stream().allMatch(row -> row.from().isAfter(day));
  }

  private void remember(Rate rate) {
    used.put(rate.table() + " " + rate.code() + " " + rate.from(), rate);
  }

  public List<MissingRate> missing() {
    return List.copyOf(missing);
  }

  public List<Rate> used() {
    return List.copyOf(used.values());
  }
}

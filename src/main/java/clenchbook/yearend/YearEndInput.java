package clenchbook.yearend;

import clenchbook.book.Book;
import clenchbook.job.Jobs;
import clenchbook.rates.RateTables;
import java.util.List;
import java.util.Optional;

/**
 * Everything a year's end is made from, frozen.
 *
 * @param book the farrier's book
 * @param jobs its visits, resolved
 * @param taxYear the tax year
 * @param quarter only this quarter of it, 1 to 4; empty for the whole year
 * @param rates the rate tables with any overlay
 * @param billed every invoice and credit note that is not void, of any date, and every visit that
 *     no invoice bears
 * @param stock the stock's cost at both ends of the period
 * @param owed the register's balances at both ends of the period
 */
public record YearEndInput(
    Book book,
    Jobs jobs,
    TaxYear taxYear,
    Optional<Integer> quarter,
    RateTables rates,
    List<Billed> billed,
    StockValue stock,
    Owed owed) {
  /** Sorts what was billed, oldest first. */
  public YearEndInput {
    billed = billed.stream().sorted(Billed.OLDEST_FIRST).toList();
  }

  /** The quarter, or the whole year. */
  public Period period() {
    return quarter.map(taxYear::quarter).orElse(taxYear.days());
  }
}

package clenchbook.tax.year;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Book;
import clenchbook.jobs.Jobs;
import clenchbook.tax.rates.RateTables;
import clenchbook.values.Period;
import java.util.List;
import java.util.Optional;

/**
 * Everything a year's end is made from, frozen.
 *
 * @param jobs the book's visits, resolved
 * @param register every document of the register, of any date; empty without a register
 * @param taxYear the tax year
 * @param quarter only this quarter of it, 1 to 4; empty for the whole year
 * @param rates the rate tables with any overlay
 * @param stock the stock's cost at both ends of the period; counts on the invoiced basis only
 */
public record YearEndInput(
    Jobs jobs,
    List<BilledDocument> register,
    TaxYear taxYear,
    Optional<Integer> quarter,
    RateTables rates,
    StockValue stock) {
  /** Copies its list. */
  public YearEndInput {
    register = List.copyOf(register);
  }

  /** The same with another stock, for figures over other days. */
  public YearEndInput withStock(StockValue other) {
    return new YearEndInput(jobs, register, taxYear, quarter, rates, other);
  }

  /** The farrier's book. */
  public Book book() {
    return jobs.index().book();
  }

  /** The quarter, or the whole year. */
  public Period period() {
    return quarter.map(taxYear::quarter).orElse(taxYear.days());
  }
}

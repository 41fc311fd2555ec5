package clenchbook.tax.jurisdiction.de;

import clenchbook.book.Book;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Whether the business is a small one that charges no tax (Umsatzsteuergesetz § 19), told by what
 * it bills: none of a year's bills bears tax. Where the limit of the current year was passed, the
 * sales before the first taxed one are still a small business's.
 */
final class SmallBusiness {
  private final TreeMap<Integer, LocalDate> firstTaxed = new TreeMap<>();
  private final TreeMap<Integer, BigDecimal> untaxedBefore = new TreeMap<>();
  private final TreeMap<Integer, BigDecimal> sold = new TreeMap<>();
  private final boolean chargesTax;
  private final RateLookup rates;

  private SmallBusiness(boolean chargesTax, RateLookup rates) {
    this.chargesTax = chargesTax;
    this.rates = rates;
  }

  /**
   * Of a book and everything billed, of any date.
   *
   * @param billed oldest first
   */
  static SmallBusiness of(Book book, List<Billed> billed, RateLookup rates) {
    boolean chargesTax =
        book.taxRates().stream()
            .anyMatch(rate -> rate.kind().charged() && rate.ratePercent().signum() > 0);
    SmallBusiness small = new SmallBusiness(chargesTax, rates);
    billed.stream().filter(Billed::isIncome).forEach(small::count);
    return small;
  }

  private void count(Billed bill) {
    int year = bill.date().getYear();
    for (BilledLine line : bill.lines()) {
      sold.merge(year, line.net(), BigDecimal::add);
      if (line.tax().signum() != 0) {
        firstTaxed.putIfAbsent(year, bill.date());
      } else if (!firstTaxed.containsKey(year)) {
        untaxedBefore.merge(year, line.net(), BigDecimal::add);
      }
    }
  }

  /** Whether a sale without tax on this day is that of a small business. */
  boolean on(LocalDate day) {
    LocalDate taxed = firstTaxed.get(day.getYear());
    if (taxed == null) {
      return inYear(day.getYear());
    }
    return day.isBefore(taxed) && passedTheLimit(taxed);
  }

  /** Whether the business is a small one all through a calendar year. */
  boolean inYear(int year) {
    return !firstTaxed.containsKey(year) && (sold.containsKey(year) || !chargesTax);
  }

  private boolean passedTheLimit(LocalDate taxed) {
    Optional<Rate> limit = rates.ask("de/turnover", "limit current", taxed);
    BigDecimal before = untaxedBefore.getOrDefault(taxed.getYear(), BigDecimal.ZERO);
    return limit.filter(rate -> before.compareTo(rate.amount()) > 0).isPresent();
  }
}

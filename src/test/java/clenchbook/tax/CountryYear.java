package clenchbook.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.year.StockValue;
import clenchbook.texts.TextSource;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A year of one country's book, whose months were billed and issued one after the other.
 *
 * @param country the regime's word
 * @param year the year in which the tax year starts
 * @param months the months billed
 * @param stock the stock at both ends of the whole year
 * @param book the book on a basis: {@code cash} or {@code invoiced}
 */
record CountryYear(
    String country,
    int year,
    List<String> months,
    StockValue stock,
    Function<String, WrittenBook> book) {

  List<BilledDocument> register(String basis) {
    return YearBook.run(book.apply(basis), months);
  }

  YearEndFindings of(String basis) {
    return of(basis, stock, Optional.empty());
  }

  YearEndFindings with(StockValue other, String basis) {
    return of(basis, other, Optional.empty());
  }

  /** A quarter, 1 to 4; 0 for the whole year. */
  YearEndFindings quarter(String basis, int quarter) {
    return quarter == 0 ? of(basis) : of(basis, StockValue.NONE, Optional.of(quarter));
  }

  /** The whole year, said from other texts. */
  YearEndFindings speaking(TextSource texts, String basis) {
    return YearBook.end(
        book.apply(basis).speaking(texts), register(basis), year, stock, Optional.empty());
  }

  private YearEndFindings of(String basis, StockValue at, Optional<Integer> quarter) {
    return YearBook.end(book.apply(basis), register(basis), year, at, quarter);
  }

  /** Fails where a line does not open to its rows, or the journal does not balance. */
  void assertAddsUp(String basis, int quarter) {
    YearEndFindings findings = quarter(basis, quarter);
    YearBook.assertEveryLineOpens(findings);
    YearBook.assertJournalBalances(findings, 6);
    Set<String> countries =
        YearBook.table(findings, "tax-summary").rows().stream()
            .map(row -> row.get(0))
            .collect(Collectors.toSet());
    assertEquals(Set.of(country), countries);
  }
}

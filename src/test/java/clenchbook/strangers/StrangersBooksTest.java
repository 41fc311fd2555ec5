package clenchbook.strangers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.MonthBilling;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.jobs.JobResolver;
import clenchbook.jobs.Jobs;
import clenchbook.reading.BookReader;
import clenchbook.reading.ReadOptions;
import clenchbook.reading.ReadResult;
import java.io.IOException;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The books of strangers give the invoices that a person would write. */
class StrangersBooksTest {
  @TempDir Path folder;

  static Stream<StrangersBook> readAtOnce() {
    return all().filter(book -> book.needs() == StrangersBook.Needs.NOTHING);
  }

  private static Stream<StrangersBook> all() {
    return Stream.of(
            EnglishBooks.all(),
            GermanBooks.all(),
            FrenchBooks.all(),
            SpanishBooks.all(),
            DutchBooks.all())
        .flatMap(List::stream);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("readAtOnce")
  void a_strangers_book_is_billed_as_a_person_would(StrangersBook book) throws IOException {
    ReadResult read = BookReader.read(book.kept().write(folder), ReadOptions.of(book.machine()));
    assertEquals(
        book.invoices().stream().sorted().toList(), invoices(read, YearMonth.parse(book.month())));
    assertEquals(book.told(), told(read));
  }

  private static List<String> invoices(ReadResult read, YearMonth month) {
    Jobs jobs = JobResolver.resolve(read.book());
    BillingOptions options = new BillingOptions(month, false, Optional.empty(), false);
    return MonthBilling.decide(jobs, List.of(), options).month().stream()
        .map(bill -> bill.owner() + " " + bill.gross().toPlainString())
        .sorted()
        .toList();
  }

  private static List<String> told(ReadResult read) {
    Jobs jobs = JobResolver.resolve(read.book());
    return Stream.concat(read.problems().stream(), jobs.problems().stream())
        .map(problem -> problem.kind() + " " + problem.at())
        .toList();
  }
}

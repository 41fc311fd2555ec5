package clenchbook.strangers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.MonthBilling;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.commands.BookCheck;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.Terminal;
import clenchbook.jobs.JobResolver;
import clenchbook.jobs.Jobs;
import clenchbook.problem.Severity;
import clenchbook.reading.BookReader;
import clenchbook.reading.ReadOptions;
import clenchbook.reading.ReadResult;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The books of strangers give the invoices that a person would write. */
class StrangersBooksTest {
  /** What each of the books that need a guess is to be told, by the name of its test. */
  private static final Map<String, String> OWN_WORDS =
      Map.of(
          "en, a sheet for each client", "*,(sheet name),Owner\n",
          "en, an exported list, month first", "*,Total,Charge\n",
          "de, day and customer once above their horses",
              "*,Datum,\"Date, carried down\"\n*,Kunde,\"Owner, carried down\"\n",
          "fr, a sheet a month, owner and place once",
              "*,Jour,\"Date, carried down\"\n*,Propriétaire,\"Owner, carried down\"\n"
                  + "*,Lieu,\"Place, carried down\"\n",
          "es, a sheet for each client", "*,(sheet name),Owner\n");

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

  static Stream<StrangersBook> guessed() {
    return all().filter(book -> book.needs() == StrangersBook.Needs.PROPOSE);
  }

  /** Fifteen are read as they are; these five need the farrier's own words, or a guess at them. */
  @Test
  void five_of_the_twenty_books_need_a_word() {
    assertEquals(20, all().count());
    assertEquals(
        OWN_WORDS.keySet(), guessed().map(StrangersBook::name).collect(Collectors.toSet()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("guessed")
  void a_book_that_needs_a_word_holds_rows_back_until_it_has_it(StrangersBook book)
      throws IOException {
    Path file = book.kept().write(folder);
    assertFalse(heldRows(BookReader.read(file, ReadOptions.of(book.machine()))).isEmpty());
    String own = file.getFileName().toString().replaceFirst("\\.\\w+$", ".headings.csv");
    Files.writeString(folder.resolve(own), "Sheet,Mine,Means\n" + OWN_WORDS.get(book.name()));
    ReadResult read = BookReader.read(file, ReadOptions.of(book.machine()));
    assertEquals(
        book.invoices().stream().sorted().toList(), invoices(read, YearMonth.parse(book.month())));
    assertEquals(book.told(), told(read));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("guessed")
  void a_book_that_needs_a_word_is_billed_after_a_guess_without_an_edit(StrangersBook book)
      throws IOException {
    Path file = book.kept().write(folder);
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    Machine machine = new Machine(LocalDate.of(2026, 4, 1), book.machine(), Optional.empty());
    Terminal terminal = new Terminal(nowhere, nowhere, false);
    new BookCheck(file, Optional.empty(), Optional.empty(), true, machine, terminal).run();
    ReadResult read = BookReader.read(file, ReadOptions.of(book.machine()));
    assertTrue(read.understood().headingsFile().isPresent());
    assertEquals(
        book.invoices().stream().sorted().toList(), invoices(read, YearMonth.parse(book.month())));
    assertEquals(book.told(), told(read));
  }

  private static List<String> heldRows(ReadResult read) {
    return Stream.concat(
            read.problems().stream(), JobResolver.resolve(read.book()).problems().stream())
        .filter(problem -> problem.severity() == Severity.HELD)
        .map(problem -> problem.at().toString())
        .toList();
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

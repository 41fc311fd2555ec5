package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.commands.mailing.SendRequest;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.delivery.CredentialReader;
import clenchbook.delivery.SmtpServer.Protection;
import clenchbook.reading.SmallBook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was understood of a book, and assumed for want of a setting, is said. */
class UnderstoodRunTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  @TempDir Path folder;

  private final ByteArrayOutputStream said = new ByteArrayOutputStream();

  private static SmallBook book() {
    return SmallBook.visits("Date|Client|Horse|Work|Quid")
        .visit(DAY, "Ann", "Bramble", "Trim", 45)
        .sheet("Prices", "Work|Price (£)")
        .row("Prices", "Trim", 40)
        .sheet("Doodles", "This|That")
        .row("Doodles", "a", "b")
        .hiding("Prices");
  }

  private static Machine machine(Locale locale) {
    return new Machine(LocalDate.of(2026, 4, 1), locale, Optional.empty());
  }

  private Terminal terminal() {
    PrintStream to = new PrintStream(said, true, StandardCharsets.UTF_8);
    return new Terminal(to, to, false);
  }

  private List<String> check(Path book, Locale locale) {
    said.reset();
    new BookCheck(book, Optional.empty(), Optional.empty(), machine(locale), terminal()).run();
    return said.toString(StandardCharsets.UTF_8).lines().toList();
  }

  private int monthEnd(Path book, Locale locale) {
    said.reset();
    MonthEndRequest request =
        new MonthEndRequest(
            book,
            YearMonth.of(2026, 3),
            Optional.empty(),
            RegisterChoice.USUAL,
            false,
            Optional.empty(),
            Optional.empty());
    return new MonthEndRun(request, machine(locale), terminal()).run();
  }

  @Test
  void check_says_what_each_sheet_and_column_was_taken_for_unread_ones_first() {
    List<String> lines = check(book().write(folder), Locale.UK);
    int start = lines.indexOf("What was understood");
    assertEquals(
        """
        What was understood
          hidden sheets that are read: Prices
          not read: Visits!E 'Quid' (holds numbers that may be money or minutes)
          not read: the sheet Doodles ('This', 'That')
          Visits is read as Visits
            A 'Date' = Date, by name
            B 'Client' = Owner, by known word
            C 'Horse' = Horse, by name
            D 'Work' = Work, by name
          Prices is read as Work
            A 'Work' = Work, by name (hidden sheet)
            B 'Price (£)' = Price, by name (hidden sheet)\
        """,
        String.join("\n", lines.subList(start, start + 12)));
    assertTrue(
        lines.contains(
            "Visits!E1: the column 'Quid' holds numbers that may be money or minutes and is not"
                + " read; expected a heading of the guide, or a row in Headings (also 'not"
                + " read'); check --propose can guess"));
    assertTrue(lines.contains("  Country GB, from this machine's locale"));
    assertTrue(lines.contains("  Currency GBP, from this machine's locale"));
    assertTrue(lines.contains("  Units metric"));
  }

  @Test
  void month_end_writes_what_was_understood_and_says_what_was_assumed() throws IOException {
    assertEquals(MonthEndRun.DONE, monthEnd(book().write(folder), Locale.UK));
    Path month = folder.resolve("book reports/2026-03");
    assertEquals(
        """
        sheet,taken_as,column,heading,meaning,how,note
        Visits,Visits,E,Quid,,not read,holds numbers that may be money or minutes
        Doodles,,A,This,,not read,
        Doodles,,B,That,,not read,
        Visits,Visits,A,Date,Date,name,
        Visits,Visits,B,Client,Owner,known word,
        Visits,Visits,C,Horse,Horse,name,
        Visits,Visits,D,Work,Work,name,
        Prices,Work,A,Work,Work,name,hidden sheet
        Prices,Work,B,Price (£),Price,name,hidden sheet
        """,
        Files.readString(month.resolve("figures/understood.csv")).replace("\r\n", "\n"));
    String words =
        "Assumed, because Settings do not say: Country GB, from this machine&#39;s locale; Currency"
            + " GBP";
    String page = Files.readString(month.resolve("index.html")).replace("'", "&#39;");
    assertTrue(page.contains(words), page);
    assertTrue(page.contains("Not read, though money or minutes stand there: Visits!E Quid."));
    assertTrue(said.toString(StandardCharsets.UTF_8).startsWith("Assumed, because Settings"));
  }

  @Test
  void a_book_whose_currency_nothing_gives_is_not_billed() throws IOException {
    Locale nowhere = Locale.ENGLISH;
    Path book = book().write(folder);
    RunFault fault = assertThrows(RunFault.class, () -> monthEnd(book, nowhere));
    assertTrue(fault.getMessage().contains("gives no Currency"), fault.getMessage());
    assertFalse(Files.exists(folder.resolve("book.register.db")));
    Path other = Files.createDirectories(folder.resolve("other"));
    Path told =
        book().sheet("Settings", "Setting|Value").row("Settings", "Land", "Irland").write(other);
    assertEquals(MonthEndRun.DONE, monthEnd(told, nowhere));
    assertTrue(said.toString(StandardCharsets.UTF_8).contains("Currency EUR, the country's"));
  }

  private int send(Path book, Locale locale) {
    said.reset();
    SendRequest request =
        new SendRequest(
            book,
            YearMonth.of(2026, 3),
            Optional.empty(),
            RegisterChoice.USUAL,
            false,
            false,
            false,
            Set.of(),
            Protection.ANY_CERTIFICATE,
            Duration.ZERO);
    CredentialReader none = new CredentialReader(Map.of(), folder.resolve("none"));
    return new SendRun(request, machine(locale), none, terminal()).run();
  }

  @Test
  void nothing_is_sent_from_a_book_whose_currency_nothing_gives() throws IOException {
    Path book = book().write(folder);
    assertEquals(MonthEndRun.DONE, monthEnd(book, Locale.UK));
    RunFault fault = assertThrows(RunFault.class, () -> send(book, Locale.ENGLISH));
    assertTrue(fault.getMessage().contains("gives no Currency"), fault.getMessage());
    assertFalse(Files.exists(folder.resolve("book reports/2026-03/outbox")));
    assertEquals(MonthEndRun.DONE, send(book, Locale.UK));
    String words = "Assumed, because Settings do not say: Country GB";
    assertTrue(said.toString(StandardCharsets.UTF_8).contains(words));
    assertTrue(Files.exists(folder.resolve("book reports/2026-03/outbox")));
  }

  @Test
  void a_book_that_says_everything_is_read_without_a_word() throws IOException {
    SmallBook book =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit(DAY, "Ann", "Bramble", "Trim", 45)
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Country", "GB")
            .row("Settings", "Currency", "GBP")
            .row("Settings", "Language", "en")
            .row("Settings", "Units", "metric")
            .row("Settings", "Distance unit", "mile")
            .row("Settings", "Date order", "dmy");
    assertEquals(MonthEndRun.DONE, monthEnd(book.write(folder), Locale.ENGLISH));
    assertFalse(said.toString(StandardCharsets.UTF_8).contains("Assumed"));
    Path page = folder.resolve("book reports/2026-03/index.html");
    assertFalse(Files.readString(page).contains("How the book was read"));
  }
}

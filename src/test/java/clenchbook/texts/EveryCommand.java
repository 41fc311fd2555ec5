package clenchbook.texts;

import clenchbook.commands.BookCheck;
import clenchbook.commands.CompareRun;
import clenchbook.commands.MonthEndRequest;
import clenchbook.commands.MonthEndRun;
import clenchbook.commands.NewBook;
import clenchbook.commands.PaymentsRun;
import clenchbook.commands.SendRun;
import clenchbook.commands.YearEndRequest;
import clenchbook.commands.YearEndRun;
import clenchbook.commands.mailing.SendRequest;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.StartedAs;
import clenchbook.commands.opening.Terminal;
import clenchbook.delivery.CredentialReader;
import clenchbook.delivery.SmtpServer.Protection;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Every command over one book, one after another, and what each says on the terminal. */
final class EveryCommand {
  private final Path book;
  private final YearMonth month;
  private final Path out;
  private final Machine machine;
  private final Map<String, String> said = new TreeMap<>();

  private EveryCommand(MadeUpBook book, Path out, TextSource texts) {
    this.book = book.file();
    this.month = book.month();
    this.out = out;
    this.machine =
        new Machine(
            month.plusMonths(1).atDay(5),
            Locale.GERMANY,
            Optional.empty(),
            Optional.empty(),
            texts);
  }

  /**
   * Runs them.
   *
   * @param book the book
   * @param out takes the reports
   * @param texts where the sentences come from
   * @return what was said, by command
   */
  static Map<String, String> over(MadeUpBook book, Path out, TextSource texts) throws IOException {
    EveryCommand all = new EveryCommand(book, out, texts);
    all.run("new", terminal -> all.begin(terminal));
    all.run("check", terminal -> all.check(terminal));
    all.run("month-end", terminal -> all.monthEnd(terminal));
    all.run("send", terminal -> all.send(terminal));
    all.run("year-end", terminal -> all.yearEnd(terminal));
    all.run("compare", terminal -> all.compare(terminal));
    Path statement = all.statement();
    all.run("payments", terminal -> all.payments(statement, terminal));
    return all.said;
  }

  private void run(String command, Consumer<Terminal> run) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream lines = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    Terminal terminal = new Terminal(lines, lines, true, () -> Optional.of("ja"));
    terminal.speak(machine.words());
    run.accept(terminal);
    said.put(
        command,
        bytes
            .toString(StandardCharsets.UTF_8)
            .replace(out.toString(), "")
            .replace(book.toString(), "")
            .replace("\u001b[K", "")
            .replace(book.resolveSibling("").toString(), ""));
  }

  private void begin(Terminal terminal) {
    Path begun = out.resolve("begun.xlsx");
    try {
      Files.createDirectories(out);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    NewBook.write(
        begun, "de", new StartedAs("clenchbook", "clenchbook"), month.plusMonths(1), terminal);
  }

  private void check(Terminal terminal) {
    new BookCheck(book, Optional.empty(), Optional.empty(), machine, terminal).run();
  }

  private void monthEnd(Terminal terminal) {
    MonthEndRequest request =
        new MonthEndRequest(
            book,
            month,
            Optional.of(out),
            RegisterChoice.USUAL,
            false,
            Optional.empty(),
            Optional.empty());
    new MonthEndRun(request, machine, terminal).run();
  }

  private void send(Terminal terminal) {
    SendRequest request =
        new SendRequest(
            book,
            month,
            Optional.of(out),
            RegisterChoice.USUAL,
            true,
            false,
            true,
            Set.of(),
            Protection.CHECKED,
            Duration.ZERO);
    new SendRun(request, machine, new CredentialReader(Map.of(), book), terminal).run();
  }

  private void yearEnd(Terminal terminal) {
    YearEndRequest request =
        new YearEndRequest(
            book,
            Optional.empty(),
            Optional.empty(),
            false,
            Optional.of(out),
            RegisterChoice.USUAL,
            Optional.empty());
    new YearEndRun(request, machine, terminal).run();
  }

  private void compare(Terminal terminal) {
    Optional<Path> compared = Optional.of(out.resolve("compared"));
    new CompareRun(book, Optional.empty(), Optional.empty(), compared, machine, terminal).run();
  }

  /** Money in that names an invoice, that nobody knows, that names an owner alone; money out. */
  private Path statement() throws IOException {
    Path invoices = out.resolve(month.toString()).resolve("figures/invoices.csv");
    return Files.writeString(
        book.resolveSibling("bank.csv"),
        """
        Date,Name,Description,Amount,Balance
        2026-10-01,Zx Qvv,%s,1.00,101.00
        2026-10-01,Zx Qvv,xy,7777.77,7878.77
        2026-10-02,%s,,3.33,7882.10
        2026-10-02,Zx Qvv,xy,-5.00,8000.00
        """
            .formatted(
                MadeUpRun.column(invoices, "number").get(0),
                MadeUpRun.column(invoices, "owner").get(0)));
  }

  private void payments(Path statement, Terminal terminal) {
    new PaymentsRun(
            book, List.of(statement), Optional.of(out), RegisterChoice.USUAL, machine, terminal)
        .run();
  }
}

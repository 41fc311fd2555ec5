package clenchbook.commands;

import clenchbook.bankfiles.Hints;
import clenchbook.bankfiles.Intake;
import clenchbook.bankfiles.StatementFile;
import clenchbook.bankfiles.UnreadableStatement;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Payment;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.LastVisits;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.NextStep;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Places;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.commands.opening.Typing;
import clenchbook.matching.MatchResult;
import clenchbook.matching.Matching;
import clenchbook.matching.PaymentFiles;
import clenchbook.matching.Proposal;
import clenchbook.matching.bank.AccountMask;
import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.StatementCheck;
import clenchbook.matching.known.BookLedger;
import clenchbook.matching.known.Ledger;
import clenchbook.print.files.CsvText;
import clenchbook.print.files.OutputFile;
import clenchbook.print.files.OutputFolder;
import clenchbook.register.Register;
import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The command {@code payments}: reads bank statements, sets them against the open invoices and
 * writes the rows to paste. Neither the book nor the register is written.
 */
public final class PaymentsRun {
  private final Path book;
  private final List<Path> statements;
  private final Optional<Path> out;
  private final RegisterChoice register;
  private final Machine machine;
  private final Terminal terminal;

  /**
   * Makes the run.
   *
   * @param book the workbook
   * @param statements the bank's files
   * @param out the folder of reports; empty for the one beside the book
   * @param register which register
   * @param machine the machine
   * @param terminal where it speaks
   */
  public PaymentsRun(
      Path book,
      List<Path> statements,
      Optional<Path> out,
      RegisterChoice register,
      Machine machine,
      Terminal terminal) {
    this.book = book;
    this.statements = List.copyOf(statements);
    this.out = out;
    this.register = register;
    this.machine = machine;
    this.terminal = terminal;
  }

  /**
   * Runs it.
   *
   * @return 1 when a balance does not tie or days are missing between statements, else 0
   * @throws RunFault when it could not be done; then no file was written
   */
  public int run() {
    try {
      OpenBook open = OpenBook.read(book, machine, terminal);
      Path file = register.in(open, Places.reports(book, out));
      List<BilledDocument> documents = Register.read(file);
      register.checkBook(open, file, documents);
      Intake intake = read(open.book().settings());
      terminal.progress(Message.of("commands.progress.matching"));
      Ledger ledger =
          BookLedger.of(open.jobs(), documents, lastDay(open, documents, intake.entries()));
      MatchResult result = Matching.of(ledger, intake.statements(), intake.entries());
      write(open, ledger, intake, result);
      say(ledger, intake, result);
      int code = checked(StatementCheck.of(intake.statements(), intake.entries()));
      terminal.say(NextStep.of(next(open, result)));
      return code;
    } catch (OutOfMemoryError tooLarge) {
      throw new RunFault(Message.of("commands.payments.tooLarge"));
    } finally {
      terminal.clear();
    }
  }

  private Intake read(Settings settings) {
    Intake intake = new Intake();
    Hints hints = new Hints(monthFirst(settings), settings.currency());
    for (Path file : statements) {
      String shown = AccountMask.ofAll().hide(String.valueOf(file.getFileName()));
      terminal.progress(Message.of("commands.progress.reading", shown));
      try {
        StatementFile.read(file, shown, hints, intake);
      } catch (UnreadableStatement e) {
        throw new RunFault(Message.of("commands.payments.statement", shown, e.message()), e);
      } catch (IOException e) {
        throw new RunFault(Message.of("commands.cantRead", shown, DiskTrouble.why(e)), e);
      }
    }
    return intake;
  }

  private static boolean monthFirst(Settings settings) {
    String order = settings.text(Setting.DATE_ORDER);
    return order.isEmpty() ? settings.text(Setting.COUNTRY).equals("US") : order.equals("mdy");
  }

  private static LocalDate lastDay(
      OpenBook open, List<BilledDocument> documents, List<BankEntry> entries) {
    return Stream.of(
            documents.stream().map(BilledDocument::date),
            open.book().payments().stream().map(Payment::date),
            entries.stream().map(BankEntry::date))
        .flatMap(days -> days)
        .max(LocalDate::compareTo)
        .orElse(LocalDate.EPOCH);
  }

  private void write(OpenBook open, Ledger ledger, Intake intake, MatchResult result) {
    int digits = open.book().settings().minorUnit().digits();
    PaymentFiles rows =
        new PaymentFiles(ledger, intake.statements(), result, digits, terminal.texts());
    Map<String, OutputFile> files = new LinkedHashMap<>();
    files.put("payments-to-add.csv", to -> CsvText.write(to, PaymentFiles.TO_ADD, rows.toAdd()));
    files.put("unmatched.csv", to -> CsvText.write(to, PaymentFiles.LEFT, rows.unmatched()));
    files.put("already-there.csv", to -> CsvText.write(to, PaymentFiles.LEFT, rows.alreadyThere()));
    Map<String, Object> facts = new LinkedHashMap<>();
    facts.put("program", "clenchbook");
    facts.put("version", RunFacts.version());
    facts.put("command", "payments");
    facts.put("workbook_sha256", open.sha256());
    Path folder = folder();
    try {
      OutputFolder.write(folder, files, facts);
    } catch (IOException e) {
      throw DiskTrouble.writing(
          Message.of("commands.disk.payments"), folder, e, Message.of("commands.disk.nothingLost"));
    }
  }

  private Path folder() {
    return Places.reports(book, out).resolve("payments");
  }

  private void say(Ledger ledger, Intake intake, MatchResult result) {
    if (ledger.documents().isEmpty()) {
      terminal.warn(Message.of("commands.payments.noInvoices"));
    }
    long sure = result.toAdd().stream().filter(each -> each.sure() >= Proposal.SURE_ENOUGH).count();
    terminal.say(
        Message.of(
            "commands.payments.done",
            intake.entries().size(),
            sure,
            result.toAdd().size() - sure,
            result.unmatched().size(),
            result.alreadyThere().size(),
            folder().resolve("payments-to-add.csv").toString()));
  }

  private Message next(OpenBook open, MatchResult result) {
    String monthEnd =
        new Typing(book, out, register, machine.headings())
            .command("month-end", LastVisits.option(open, machine.today()));
    return result.toAdd().isEmpty()
        ? Message.of("commands.payments.nextNothing", monthEnd)
        : Message.of("commands.payments.nextPaste", monthEnd);
  }

  private int checked(StatementCheck check) {
    check.faults().forEach(terminal::warn);
    check.notes().forEach(terminal::warn);
    return check.faults().isEmpty() ? MonthEndRun.DONE : MonthEndRun.ROWS_HELD;
  }
}

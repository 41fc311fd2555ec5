package clenchbook.commands;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Setting;
import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.LastVisits;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.NextStep;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.commands.opening.Typing;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemLines;
import clenchbook.problem.Severity;
import clenchbook.register.Register;
import clenchbook.register.RegisterFault;
import clenchbook.register.RegisterFile;
import clenchbook.reports.month.BookFigures;
import clenchbook.reports.month.PaymentRules;
import clenchbook.reports.month.RenamedOwners;
import clenchbook.texts.Message;
import clenchbook.writing.MarkedCopyWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The command {@code check}: every problem of a book at once; nothing is written but a copy. */
public final class BookCheck {
  private final Path book;
  private final Optional<Path> register;
  private final Optional<Path> marked;
  private final boolean propose;
  private final Machine machine;
  private final Terminal terminal;

  /** A run that guesses no headings; see the other constructor. */
  public BookCheck(
      Path book,
      Optional<Path> register,
      Optional<Path> marked,
      Machine machine,
      Terminal terminal) {
    this(book, register, marked, false, machine, terminal);
  }

  /**
   * Makes the run.
   *
   * @param book the workbook
   * @param register the register, for the numbers that payments name; empty for the one beside
   * @param marked where to write the marked copy; empty for none
   * @param propose whether to guess unknown sheets and headings, into the file beside the book
   * @param machine the machine
   * @param terminal where the problems are printed
   */
  public BookCheck(
      Path book,
      Optional<Path> register,
      Optional<Path> marked,
      boolean propose,
      Machine machine,
      Terminal terminal) {
    this.book = book;
    this.register = register;
    this.marked = marked;
    this.propose = propose;
    this.machine = machine;
    this.terminal = terminal;
  }

  /**
   * Runs it. A damaged register is named after the book's own problems; the numbers that payments
   * name are then not known, and no copy is written.
   *
   * @return 1 when rows are held back, else 0
   * @throws RunFault when the book can't be read or holds no visits and nothing is guessed, or when
   *     the file for the guesses is there already
   * @throws RegisterFault when there is a register that is damaged or can't be read
   */
  public int run() {
    ProposedHeadings headings = new ProposedHeadings(book, machine, terminal);
    if (propose) {
      headings.refuseToOverwrite();
    }
    OpenBook open = OpenBook.read(book, machine, terminal);
    open.warnOfLaterDates(machine.today(), terminal);
    List<BilledDocument> documents = documents(open);
    List<Problem> problems = new ArrayList<>(open.problems());
    problems.addAll(payments(open, documents));
    problems.addAll(RenamedOwners.problems(open.jobs().index(), documents));
    List<Problem> sorted = tell(open, problems);
    marked.ifPresent(copy -> write(copy, sorted));
    boolean held = sorted.stream().anyMatch(problem -> problem.severity() == Severity.HELD);
    if (propose && headings.write(open)) {
      return held ? 1 : 0;
    }
    open.withVisits();
    Typing typing =
        new Typing(
            book, Optional.empty(), new RegisterChoice(register, false, false), machine.headings());
    String monthEnd = typing.command("month-end", LastVisits.option(open, machine.today()));
    terminal.say(
        NextStep.of(
            held ? Message.of("commands.check.nextHeld", monthEnd) : Message.literal(monthEnd)));
    return held ? 1 : 0;
  }

  private List<Problem> tell(OpenBook open, List<Problem> problems) {
    List<Problem> sorted = BookFigures.sorted(open.book(), problems);
    UnderstoodLines.of(open.understood()).forEach(terminal::say);
    ProblemLines.of(sorted, open.assumptions(), terminal.texts()).forEach(terminal::say);
    return sorted;
  }

  /** Without a register nothing is known of the numbers that payments name. */
  private static List<Problem> payments(OpenBook open, List<BilledDocument> documents) {
    if (documents.isEmpty()) {
      return List.of();
    }
    LocalDate opening =
        open.book()
            .settings()
            .findDate(Setting.OPENING_DATE)
            .orElseGet(
                () ->
                    documents.stream()
                        .map(document -> document.month().atDay(1))
                        .min(Comparator.naturalOrder())
                        .orElseThrow());
    return PaymentRules.problems(open.book().payments(), documents, opening);
  }

  /** A check needs no register, so none is asked for where the book has none. */
  private List<BilledDocument> documents(OpenBook open) {
    register
        .filter(file -> !Files.exists(file))
        .ifPresent(file -> terminal.warn(Message.of("commands.noRegister", file.toString())));
    try {
      return Register.read(register.orElseGet(() -> RegisterFile.beside(book)));
    } catch (RegisterFault fault) {
      tell(open, open.problems());
      throw fault;
    }
  }

  private void write(Path copy, List<Problem> problems) {
    if (Files.exists(copy) && same(copy)) {
      throw new RunFault(Message.of("commands.check.copyIsBook"));
    }
    try (OutputStream out = Files.newOutputStream(copy)) {
      MarkedCopyWriter.write(book, machine.password(), problems, terminal.texts(), out);
    } catch (IOException e) {
      throw new RunFault(Message.of("commands.check.copyNotWritten", DiskTrouble.why(e)), e);
    }
  }

  private boolean same(Path copy) {
    try {
      return Files.isSameFile(copy, book) || copy.toRealPath().startsWith(book.toRealPath());
    } catch (IOException e) {
      throw new RunFault(Message.of("commands.check.copyNotWritten", DiskTrouble.why(e)), e);
    }
  }
}

package clenchbook.commands.opening;

import clenchbook.book.Book;
import clenchbook.book.Setting;
import clenchbook.book.SheetKind;
import clenchbook.book.understood.Assumptions;
import clenchbook.book.understood.Understood;
import clenchbook.einvoice.EInvoiceRules;
import clenchbook.jobs.JobResolver;
import clenchbook.jobs.Jobs;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.reading.BookReader;
import clenchbook.reading.ReadOptions;
import clenchbook.reading.ReadResult;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.register.RegisterFile;
import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A book that has been read, with its jobs and everything wrong with it.
 *
 * @param file the workbook
 * @param sha256 its hash
 * @param jobs its jobs
 * @param problems all problems of the book itself
 * @param understood what was made of each sheet and column
 */
public record OpenBook(
    Path file, String sha256, Jobs jobs, List<Problem> problems, Understood understood) {
  /** Copies its list. */
  public OpenBook {
    problems = List.copyOf(problems);
  }

  /**
   * Reads a book.
   *
   * @param file the workbook, or a folder of CSV files
   * @param machine the machine
   * @param terminal where progress is shown
   * @return the book
   * @throws RunFault when it can't be used
   */
  public static OpenBook read(Path file, Machine machine, Terminal terminal) {
    if (!Files.exists(file)) {
      String from = file.isAbsolute() ? "" : System.getProperty("user.dir", "");
      throw new RunFault(
          Message.of("commands.noWorkbook", file.toString(), MachineLocale.hint(from + file)));
    }
    if (RegisterFile.isDatabase(file)) {
      throw new RunFault(Message.of("commands.isDatabase", name(file)));
    }
    if (machine.headings().isPresent() && !Files.isRegularFile(machine.headings().get())) {
      throw new RunFault(
          Message.of("commands.noHeadingsFile", machine.headings().get().toString()));
    }
    try {
      terminal.progress(Message.of("commands.progress.reading", name(file)));
      ReadOptions options =
          new ReadOptions(
              machine.password(),
              machine.locale(),
              machine.headings(),
              machine.texts(),
              terminal::speak,
              rows -> terminal.progress(Message.of("commands.progress.rows", rows)));
      ReadResult result = BookReader.read(file, options);
      terminal.progress(Message.of("commands.progress.workingOut"));
      Jobs jobs = JobResolver.resolve(result.book());
      List<Problem> problems = new ArrayList<>(result.problems());
      problems.addAll(jobs.problems());
      problems.addAll(SettingFaults.of(jobs, folder(file)));
      problems.addAll(NameFaults.of(result.book()));
      problems.addAll(EInvoiceRules.problems(jobs));
      return new OpenBook(file, result.sha256(), jobs, problems, result.understood());
    } catch (UnreadableWorkbook e) {
      throw refused(file, e);
    } catch (IOException e) {
      throw new RunFault(Message.of("commands.cantRead", name(file), DiskTrouble.why(e)), e);
    }
  }

  /** A run that stops since a book, or its file of headings, can't be used at all. */
  public static RunFault refused(Path file, UnreadableWorkbook why) {
    Message place = Message.literal(name(file) + ": ");
    return new RunFault(Message.joined("", List.of(place, why.message())), why);
  }

  /**
   * Refuses a book without visits: there is nothing to work on.
   *
   * @return this book
   * @throws RunFault when no sheet of visits was found
   */
  public OpenBook withVisits() {
    if (book().present().contains(SheetKind.VISITS)) {
      return this;
    }
    Message why =
        problems.stream()
            .filter(
                problem ->
                    problem.kind() == ProblemKind.SHEET_MISSING
                        || problem.kind() == ProblemKind.HEADING_MISSING)
            .map(problem -> Message.of("commands.noVisitsBecause", name(file), problem.problem()))
            .findFirst()
            .orElseGet(() -> Message.of("commands.noVisits", name(file)));
    throw new RunFault(guess(why));
  }

  /** How to have the headings guessed; a file that is there already is looked through instead. */
  private Message guess(Message why) {
    return understood
        .headingsFile()
        .map(there -> Message.of("commands.noVisitsLook", why, there))
        .orElseGet(
            () ->
                Message.of(
                    "commands.noVisitsGuess", why, NextStep.command("check", file, "--propose")));
  }

  /** A file's own name; the whole path of a root, which has none. */
  private static String name(Path file) {
    return String.valueOf(Optional.ofNullable(file.getFileName()).orElse(file));
  }

  /**
   * Refuses a book whose currency nothing gives: an invoice in the wrong one is worse than none.
   *
   * @return this book
   * @throws RunFault where neither the settings nor the machine's locale name a currency or country
   */
  public OpenBook withCurrency() {
    if (!book().settings().text(Setting.CURRENCY).isEmpty()) {
      return this;
    }
    throw new RunFault(Message.of("commands.noCurrency", name(file)));
  }

  /**
   * Tells what was assumed for want of a setting, and by whose words the book was read.
   *
   * @param terminal where to
   */
  public void tellAssumptions(Terminal terminal) {
    understood
        .headingsFile()
        .ifPresent(name -> terminal.say(Message.of("commands.headingsFrom", name)));
    List<Message> assumed = assumptions();
    if (!assumed.isEmpty()) {
      terminal.say(Message.of("commands.assumed", Message.joined("; ", assumed)));
    }
  }

  /** What was assumed for want of a setting, one each; empty where the book says everything. */
  public List<Message> assumptions() {
    return Assumptions.of(book().settings(), understood);
  }

  /** The folder that the book lies in. */
  public static Path folder(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    return parent == null ? file.toAbsolutePath() : parent;
  }

  /**
   * The book's records.
   *
   * @return the book
   */
  public Book book() {
    return jobs.index().book();
  }

  /**
   * Whether a row of visits is held back, so that a visit that is missing may be one of them.
   *
   * @return true when at least one is
   */
  public boolean visitsHeld() {
    return visitRowsHeld() > 0;
  }

  /**
   * How many rows of visits are held back.
   *
   * @return their number, each counted once
   */
  public int visitRowsHeld() {
    return (int)
        problems.stream()
            .filter(problem -> problem.severity() == Severity.HELD)
            .filter(problem -> book().visitSheets().contains(problem.at().sheet()))
            .map(problem -> problem.at().sheet() + "!" + problem.at().row())
            .distinct()
            .count();
  }

  /**
   * Tells where a month ends before the Opening date: what was done in it stands in the opening
   * balances, and invoices of it would ask for it again.
   *
   * @param month the month that is run
   * @param terminal where to
   */
  public void warnOfOpeningDate(YearMonth month, Terminal terminal) {
    book()
        .settings()
        .findDate(Setting.OPENING_DATE)
        .filter(opening -> opening.isAfter(month.atEndOfMonth()))
        .ifPresent(opening -> terminal.warn(Message.of("commands.beforeOpening", month, opening)));
  }

  /**
   * Tells of visits dated after the day of the run; that goes to the terminal alone, since files
   * must not depend on the day.
   *
   * @param today the day of the run
   * @param terminal where to
   */
  public void warnOfLaterDates(LocalDate today, Terminal terminal) {
    LaterVisits.warnings(jobs, today).forEach(terminal::warn);
  }
}

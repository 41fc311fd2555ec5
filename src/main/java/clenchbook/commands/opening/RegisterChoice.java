package clenchbook.commands.opening;

import clenchbook.billing.corrections.BilledVisits.Bearing;
import clenchbook.billing.corrections.IssuedRows;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.numbering.BegunNumbers;
import clenchbook.register.RegisterFile;
import clenchbook.texts.Message;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which register a run works with. It guards against the two slips that would give numbers and
 * bills twice: beginning a second register for a book that has one, and taking another book's.
 *
 * @param file the register that was named; empty for the one beside the book
 * @param begin true to begin a register although there seems to be one already
 * @param sameBook true to take a register although most of what it billed is no row of the book
 */
public record RegisterChoice(Optional<Path> file, boolean begin, boolean sameBook) {
  /** The one beside the book, with both guards. */
  public static final RegisterChoice USUAL = new RegisterChoice(Optional.empty(), false, false);

  /**
   * The register's file.
   *
   * @param open the book
   * @param reports the folder of reports, in which earlier runs may have left invoices
   * @return the file; it may be missing still
   * @throws RunFault when it is missing and there are signs that the book has had one
   */
  public Path in(OpenBook open, Path reports) {
    Path register =
        file.map(Path::toAbsolutePath).orElseGet(() -> RegisterFile.beside(open.file()));
    if (!begin && !Files.exists(register)) {
      if (file.isEmpty()) {
        refuseOthers(open.file(), register);
        refuseLost(open, register, PastInvoices.in(reports));
        // Where this run's reports go elsewhere, those of earlier runs may lie in their usual
        // place.
        refuseLost(open, register, PastInvoices.in(usual(open)));
      } else {
        refuseElsewhere(open.file(), register);
      }
    }
    return register;
  }

  private static Path usual(OpenBook open) {
    return Places.reports(open.file(), Optional.empty());
  }

  private static void refuseOthers(Path book, Path register) {
    List<String> others = RegisterFile.inTheFolderOf(book);
    if (!others.isEmpty()) {
      throw new RunFault(
          Message.of("commands.register.others", String.valueOf(register.getFileName()), others));
    }
  }

  /** Named without its folder, from another folder. */
  private static void refuseElsewhere(Path book, Path register) {
    Path name = register.getFileName();
    Path beside = book.toAbsolutePath().resolveSibling(String.valueOf(name));
    if (Files.exists(beside)) {
      throw new RunFault(
          Message.of("commands.register.elsewhere", register.toString(), beside.toString()));
    }
  }

  private static void refuseLost(OpenBook open, Path register, PastInvoices past) {
    if (past.names().isEmpty()) {
      return;
    }
    int next =
        BegunNumbers.after(
            BegunNumbers.pattern(open.book().settings()), past.names(), past.last().getYear());
    String name = String.valueOf(register.getFileName());
    String lying = past.folder().toString();
    throw new RunFault(
        next == 0
            ? Message.of("commands.register.lost", name, lying)
            : Message.of("commands.register.lostAt", name, lying, Integer.toString(next)));
  }

  /**
   * Makes sure that the register is this book's.
   *
   * @param open the book
   * @param register the register's file
   * @param documents all documents of the register
   * @throws RunFault when most of what it billed is no row of the book
   */
  public void checkBook(OpenBook open, Path register, List<BilledDocument> documents) {
    if (sameBook) {
      return;
    }
    IssuedRows rows = IssuedRows.of(open.jobs(), documents, open.visitRowsHeld());
    if (rows.ofAnotherBook()) {
      throw new RunFault(
          Message.of(
              "commands.register.anotherBooks",
              String.valueOf(register.getFileName()),
              rows.visits(),
              rows.missing(),
              rows.first().map(RegisterChoice::inWords).orElse(Message.NONE)));
    }
  }

  private static Message inWords(Bearing bearing) {
    return Message.of(
        "commands.register.theFirst",
        bearing.visit().date().toString(),
        bearing.lines().get(0).horse(),
        bearing.invoice().number());
  }

  /**
   * Says that a run begins a register, and which numbers it would give again.
   *
   * @param open the book
   * @param register the register's file
   * @param reports the folder of reports
   * @param month the month that is run
   * @param terminal where to
   */
  public static void tellBeginning(
      OpenBook open, Path register, Path reports, YearMonth month, Terminal terminal) {
    List<String> seen = new ArrayList<>(PastInvoices.in(reports).names());
    seen.addAll(PastInvoices.in(usual(open)).names());
    open.book().payments().forEach(payment -> seen.add(payment.invoice()));
    BegunNumbers numbers = BegunNumbers.of(open.book().settings(), seen, month);
    terminal.say(
        Message.of(
            "commands.register.begun", String.valueOf(register.getFileName()), numbers.first()));
    if (!numbers.again().isEmpty()) {
      terminal.warn(
          Message.of(
              "commands.register.again", some(numbers.again()), Integer.toString(numbers.next())));
    }
  }

  private static Message some(List<String> numbers) {
    int most = 5;
    return numbers.size() <= most
        ? Message.literal(String.join(", ", numbers))
        : Message.of("commands.andMore", numbers.subList(0, most), numbers.size() - most);
  }
}

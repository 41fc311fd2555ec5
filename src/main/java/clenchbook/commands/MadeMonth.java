package clenchbook.commands;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.commands.opening.BookYear;
import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Terminal;
import clenchbook.commands.opening.WaitingFile;
import clenchbook.commands.printing.LettersInPrint;
import clenchbook.commands.printing.Printing;
import clenchbook.matching.WaitingPayments;
import clenchbook.print.files.OutputFile;
import clenchbook.print.files.OutputFolder;
import clenchbook.print.pdf.PdfDocuments;
import clenchbook.problem.Problem;
import clenchbook.register.Register;
import clenchbook.register.SeenPayment;
import clenchbook.reports.blocks.Report;
import clenchbook.reports.month.BilledMonth;
import clenchbook.reports.month.MonthFindings;
import clenchbook.reports.month.PaymentRules;
import clenchbook.reports.month.ReferenceRules;
import clenchbook.reports.month.RenamedOwners;
import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * A month as month-end, send and its preview make it: decided, its letters and reports in print.
 * All three lay down the same files, so that what goes out is what was looked at.
 */
final class MadeMonth {
  private final OpenBook open;
  private final Machine machine;
  private final Terminal terminal;
  private final MonthFindings findings;
  private final LettersInPrint letters;
  private final Printing.Sheets reports;

  private MadeMonth(
      OpenBook open,
      Machine machine,
      Terminal terminal,
      MonthFindings findings,
      LettersInPrint letters,
      Printing.Sheets reports) {
    this.open = open;
    this.machine = machine;
    this.terminal = terminal;
    this.findings = findings;
    this.letters = letters;
    this.reports = reports;
  }

  /**
   * Makes a month.
   *
   * @param decision what was decided about its documents
   * @param month the month
   * @param folder the folder of reports, in which payments may wait to be pasted
   * @param register where the bytes of issued documents are, and what runs have told
   * @param printing prints while the rest of the month is still being worked out
   */
  static MadeMonth begin(
      OpenBook open,
      Machine machine,
      BillingDecision decision,
      YearMonth month,
      Path folder,
      Register register,
      Printing printing,
      Terminal terminal) {
    BilledMonth billed =
        BilledMonth.of(open.jobs(), decision.telling(register.told(), month), month);
    PdfDocuments documents =
        Printing.documents(open.book().settings(), open.file(), month.atEndOfMonth());
    LettersInPrint letters =
        LettersInPrint.begin(billed, Optional.of(register), documents, printing);
    Printing.Sheets reports = printing.begin(Map.of());
    Consumer<Report> print =
        report ->
            report.files().forEach(file -> reports.add(file.file(), () -> documents.report(file)));
    WaitingPayments waiting = WaitingFile.read(folder, open.book().payments(), terminal);
    LocalDate yearStart = BookYear.of(open).holding(month.atEndOfMonth());
    MonthFindings findings =
        MonthFindings.of(billed, problems(open, billed), waiting, yearStart, print);
    return new MadeMonth(open, machine, terminal, findings, letters, reports);
  }

  private static List<Problem> problems(OpenBook open, BilledMonth billed) {
    List<Problem> problems = new ArrayList<>(open.problems());
    problems.addAll(
        PaymentRules.problems(
            open.book().payments(), billed.billing().documents(), billed.billing().openingDate()));
    problems.addAll(RenamedOwners.problems(open.jobs().index(), billed.billing().documents()));
    problems.addAll(ReferenceRules.problems(open.book().settings(), billed.references(), problems));
    return problems;
  }

  /**
   * The same month, with its print, after its documents have moved on in the register.
   *
   * @param decision what is decided over the register as it is now
   */
  MadeMonth movedOn(BillingDecision decision, Register register) {
    YearMonth month = findings.month();
    BilledMonth billed =
        BilledMonth.of(open.jobs(), decision.telling(register.told(), month), month);
    return new MadeMonth(open, machine, terminal, findings.with(billed), letters, reports);
  }

  /** What was found out about the month. */
  MonthFindings findings() {
    return findings;
  }

  /** What was printed now, by number: the PDF of each draft. */
  Map<String, byte[]> drafts() {
    return letters.printed(terminal);
  }

  /** The structured invoices made now that are files of their own, by number. */
  Map<String, byte[]> eInvoices() {
    return letters.eInvoices(terminal);
  }

  /** All letters by their path among the month's files. */
  Map<String, byte[]> letters() {
    return letters.files(terminal);
  }

  /** Records the documents, their bytes and what is told in one durable step. */
  void record(Register register, List<BilledDocument> documents, List<SeenPayment> payments) {
    register.record(
        documents, drafts(), eInvoices(), payments, findings.billing().told(findings.month()));
  }

  /**
   * The month's files.
   *
   * @param outbox the paths of the outbox's files, to be linked; empty for none
   */
  Map<String, OutputFile> files(Set<String> outbox) {
    Map<String, OutputFile> files = new LinkedHashMap<>(MonthFiles.tables(findings));
    files.putAll(MonthFiles.understood(open));
    Set<String> paths = new TreeSet<>(files.keySet());
    paths.addAll(letters.paths());
    paths.addAll(reports.names());
    paths.addAll(outbox);
    files.putAll(MonthExtras.of(open, machine, findings, paths, letters.names()));
    files.putAll(MonthFiles.files(List.of(letters(), reports.done(terminal))));
    return files;
  }

  /**
   * Brings the month's files to rest.
   *
   * @param folder the month's folder
   * @param facts what {@code run.json} says before the list of files
   * @param refused what holds where the disk refuses, such as {@code nothing is lost}
   */
  void write(
      Path folder, Map<String, OutputFile> files, Map<String, Object> facts, Message refused) {
    terminal.progress(Message.of("commands.progress.writing"));
    try {
      OutputFolder.write(folder, files, facts);
    } catch (IOException e) {
      throw DiskTrouble.writing(Message.of("commands.disk.reports"), folder, e, refused);
    }
  }
}

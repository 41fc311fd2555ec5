package clenchbook.commands;

import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.commands.opening.Count;
import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Places;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.commands.printing.LettersInPrint;
import clenchbook.commands.printing.Printing;
import clenchbook.print.files.OutputFile;
import clenchbook.print.files.OutputFolder;
import clenchbook.print.pdf.PdfDocuments;
import clenchbook.problem.Problem;
import clenchbook.problem.Severity;
import clenchbook.register.Register;
import clenchbook.register.SeenPayment;
import clenchbook.reports.blocks.Report;
import clenchbook.reports.month.BilledMonth;
import clenchbook.reports.month.MonthFindings;
import clenchbook.reports.month.PaymentRules;
import clenchbook.reports.month.ReferenceRules;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * The main job: reads the book and the register, decides the month, records its documents in one
 * durable step, then brings the files to rest. Cut short anywhere, the next run ends the same.
 */
public final class MonthEndRun {
  /** Done. */
  public static final int DONE = 0;

  /** Done, but rows are held back. */
  public static final int ROWS_HELD = 1;

  private final MonthEndRequest request;
  private final Machine machine;
  private final Terminal terminal;

  /**
   * Makes the run.
   *
   * @param request what was asked
   * @param machine the machine
   * @param terminal where it speaks
   */
  public MonthEndRun(MonthEndRequest request, Machine machine, Terminal terminal) {
    this.request = request;
    this.machine = machine;
    this.terminal = terminal;
  }

  /**
   * Runs it.
   *
   * @return the exit code
   * @throws RunFault when it could not be done
   */
  public int run() {
    try (Printing printing = new Printing()) {
      return run(printing);
    } finally {
      terminal.clear();
    }
  }

  private int run(Printing printing) {
    OpenBook open = OpenBook.read(request.book(), machine, terminal).withVisits();
    open.warnOfLaterDates(machine.today(), terminal);
    Path registerFile = request.register().in(open, Places.reports(request.book(), request.out()));
    try (Register register = Register.open(registerFile)) {
      List<BilledDocument> before = register.documents();
      request.register().checkBook(open, registerFile, before);
      terminal.progress("working out " + request.month());
      BilledMonth billed = bill(open, before);
      request
          .correct()
          .ifPresent(
              number -> CorrectionAsked.check(number, before, billed.billing(), request.month()));
      if (before.isEmpty()) {
        RegisterChoice.tellBeginning(open, registerFile, request.month(), terminal);
      }
      PdfDocuments documents =
          Printing.documents(
              open.book().settings(), request.book(), request.month().atEndOfMonth());
      // Printed while the rest of the month is still being worked out; so is each report.
      LettersInPrint letters =
          LettersInPrint.begin(billed, Optional.of(register), documents, printing);
      Printing.Sheets reports = printing.begin(Map.of());
      MonthFindings month =
          decide(
              open,
              billed,
              report ->
                  report
                      .files()
                      .forEach(file -> reports.add(file.file(), () -> documents.report(file))));
      Map<String, OutputFile> files = files(open, month, letters, reports);
      List<SeenPayment> seen = register.payments();
      register.record(
          billed.billing().documents(),
          letters.printed(terminal),
          letters.eInvoices(terminal),
          SeenPayment.of(open.book().payments()),
          Map.of());
      write(open, month, files);
      register.forget(new RegisterNews(month, seen, open.book().payments()).tell(terminal));
      if (request.exportRegister().isPresent()) {
        new RegisterExport(register).writeTo(request.exportRegister().get(), terminal);
      }
      return outcome(month.problems());
    }
  }

  private BilledMonth bill(OpenBook open, List<BilledDocument> documents) {
    return BilledMonth.of(
        open.jobs(),
        documents,
        new BillingOptions(
            request.month(), request.includeEarlier(), request.correct(), open.visitsHeld()));
  }

  private static MonthFindings decide(OpenBook open, BilledMonth billed, Consumer<Report> decided) {
    List<Problem> problems = new ArrayList<>(open.problems());
    problems.addAll(
        PaymentRules.problems(
            open.book().payments(), billed.billing().documents(), billed.billing().openingDate()));
    problems.addAll(ReferenceRules.problems(open.book().settings(), billed.references(), problems));
    return MonthFindings.of(billed, problems, decided);
  }

  private Map<String, OutputFile> files(
      OpenBook open, MonthFindings month, LettersInPrint letters, Printing.Sheets reports) {
    Map<String, OutputFile> files = new LinkedHashMap<>(MonthFiles.tables(month));
    Set<String> paths = new TreeSet<>(files.keySet());
    paths.addAll(letters.paths());
    paths.addAll(reports.names());
    files.putAll(MonthExtras.of(open, machine, month, paths, letters.names()));
    files.putAll(MonthFiles.files(List.of(letters.files(terminal), reports.done(terminal))));
    return files;
  }

  private void write(OpenBook open, MonthFindings month, Map<String, OutputFile> files) {
    terminal.progress("writing");
    Path folder = Places.reports(request.book(), request.out()).resolve(request.month().toString());
    try {
      OutputFolder.write(folder, files, RunFacts.of("month-end", asked(), open));
    } catch (IOException e) {
      throw DiskTrouble.writing("the reports", folder, e, "nothing is lost");
    }
    terminal.say(done(month) + "; open " + folder.resolve("index.html"));
  }

  /** What came of it, in a few words. */
  private static String done(MonthFindings month) {
    List<BilledDocument> counted =
        month.billing().month().stream().filter(BilledDocument::counts).toList();
    if (counted.isEmpty()) {
      return month.month() + ": nothing to bill";
    }
    long invoices = counted.stream().filter(BilledDocument::invoice).count();
    long credits = counted.size() - invoices;
    BigDecimal sum =
        counted.stream().map(BilledDocument::gross).reduce(BigDecimal.ZERO, BigDecimal::add);
    return month.month()
        + ": "
        + Count.of(invoices, "invoice")
        + (credits == 0 ? "" : " and " + Count.of(credits, "credit note"))
        + ", "
        + month.jobs().index().book().settings().currency()
        + " "
        + sum.toPlainString()
        + " in all";
  }

  private Map<String, Object> asked() {
    Map<String, Object> asked = new LinkedHashMap<>();
    asked.put("month", request.month().toString());
    asked.put("include_earlier", request.includeEarlier());
    asked.put("correct", request.correct().orElse(""));
    return asked;
  }

  private int outcome(List<Problem> problems) {
    long held =
        problems.stream()
            .filter(problem -> problem.severity() == Severity.HELD)
            .map(problem -> problem.at().sheet() + problem.at().row())
            .distinct()
            .count();
    if (held > 0) {
      terminal.warn((held == 1 ? "1 row is" : held + " rows are") + " held back; see problems.csv");
      return ROWS_HELD;
    }
    return DONE;
  }
}

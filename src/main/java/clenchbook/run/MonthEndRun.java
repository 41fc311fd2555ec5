package clenchbook.run;

import clenchbook.billing.BilledDocument;
import clenchbook.billing.BillingOptions;
import clenchbook.document.OutputFile;
import clenchbook.document.OutputFolder;
import clenchbook.document.PdfDocuments;
import clenchbook.month.BookFigures;
import clenchbook.month.MonthFindings;
import clenchbook.month.PaymentRules;
import clenchbook.problem.Problem;
import clenchbook.problem.Severity;
import clenchbook.register.Register;
import clenchbook.register.SeenPayment;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
    Path registerFile = Places.register(request.book(), request.register());
    OpenBook open = OpenBook.read(request.book(), machine, terminal).withVisits();
    open.warnOfLaterDates(machine.today(), terminal);
    try (Register register = Register.open(registerFile)) {
      MonthFindings month = decide(open, register.documents());
      List<SeenPayment> seen = register.payments();
      write(open, month, register);
      register.forget(new RegisterNews(month, seen, open.book().payments()).tell(terminal));
      if (request.exportRegister().isPresent()) {
        new RegisterExport(register).writeTo(request.exportRegister().get(), terminal);
      }
      return outcome(month.problems());
    } finally {
      terminal.clear();
    }
  }

  private MonthFindings decide(OpenBook open, List<BilledDocument> documents) {
    terminal.progress("working out " + request.month());
    boolean held = open.problems().stream().anyMatch(problem -> heldVisit(open, problem));
    BillingOptions options =
        new BillingOptions(request.month(), request.includeEarlier(), request.correct(), held);
    MonthFindings month = MonthFindings.of(open.jobs(), open.problems(), documents, options);
    List<Problem> problems = new ArrayList<>(open.problems());
    problems.addAll(
        PaymentRules.problems(
            open.book().payments(), month.billing().documents(), month.billing().openingDate()));
    return month.with(BookFigures.sorted(open.book(), problems));
  }

  private static boolean heldVisit(OpenBook open, Problem problem) {
    return problem.severity() == Severity.HELD
        && open.book().visitSheets().contains(problem.at().sheet());
  }

  private void write(OpenBook open, MonthFindings month, Register register) {
    PdfDocuments documents =
        Printing.documents(open.book().settings(), request.book(), request.month().atEndOfMonth());
    MonthFiles files = new MonthFiles(month, documents);
    Map<String, byte[]> letters = new HashMap<>(stored(month, register));
    Map<String, OutputFile> all = new LinkedHashMap<>(files.tables());
    try (Printing printing = new Printing()) {
      Map<String, byte[]> printed = printing.all(files.letters(letters), terminal);
      letters.putAll(printed);
      Map<String, byte[]> reports = printing.all(files.reports(), terminal);
      all.putAll(MonthFiles.files(List.of(files.named(letters), reports)));
      all.putAll(MonthExtras.of(open, machine, month, all.keySet(), files.names()));
      register.record(month.billing().documents(), printed, SeenPayment.of(open.book().payments()));
    }
    terminal.progress("writing");
    Path folder = Places.reports(request.book(), request.out()).resolve(request.month().toString());
    try {
      OutputFolder.write(folder, all, RunFacts.of("month-end", asked(), open));
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

  private Map<String, byte[]> stored(MonthFindings month, Register register) {
    Map<String, byte[]> stored = new HashMap<>();
    for (BilledDocument document : month.billing().month()) {
      if (document.state().fixed()) {
        register.pdf(document.number()).ifPresent(pdf -> stored.put(document.number(), pdf));
      }
    }
    return stored;
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

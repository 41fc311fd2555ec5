package clenchbook.commands;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.MonthBilling;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.commands.opening.LastVisits;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.NextStep;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Places;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.commands.opening.Typing;
import clenchbook.commands.opening.WaitingFile;
import clenchbook.commands.printing.Printing;
import clenchbook.matching.WaitingPayments;
import clenchbook.print.files.OutputFile;
import clenchbook.problem.Problem;
import clenchbook.problem.Severity;
import clenchbook.register.Register;
import clenchbook.register.SeenPayment;
import clenchbook.texts.Message;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

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
    OpenBook open = OpenBook.read(request.book(), machine, terminal).withVisits().withCurrency();
    open.warnOfLaterDates(machine.today(), terminal);
    open.tellAssumptions(terminal);
    open.warnOfOpeningDate(request.month(), terminal);
    Path reports = Places.reports(request.book(), request.out());
    Path registerFile = request.register().in(open, reports);
    try (Register register = Register.open(registerFile)) {
      List<BilledDocument> before = register.documents();
      request.register().checkBook(open, registerFile, before);
      terminal.progress(Message.of("commands.progress.month", request.month()));
      BillingDecision decision = decide(open, before);
      if (before.isEmpty()) {
        RegisterChoice.tellBeginning(open, registerFile, reports, request.month(), terminal);
      }
      MadeMonth month =
          MadeMonth.begin(
              open, machine, decision, request.month(), reports, register, printing, terminal);
      Map<String, OutputFile> files = month.files(Set.of());
      List<SeenPayment> seen = register.payments();
      month.record(register, decision.documents(), SeenPayment.of(open.book().payments()));
      Path folder = reports.resolve(request.month().toString());
      month.write(
          folder,
          files,
          RunFacts.of("month-end", asked(), open),
          Message.of("commands.disk.nothingLost"));
      terminal.say(done(open, decision, folder.resolve("index.html")));
      tellWaiting(month.findings().waiting());
      ShownByPayments.tell(
          before,
          decision,
          open.book().payments(),
          new MonthSum(open.book().settings().currency(), List.of()),
          terminal);
      register.forget(
          new RegisterNews(month.findings(), seen, open.book().payments()).tell(terminal));
      if (request.exportRegister().isPresent()) {
        new RegisterExport(register).writeTo(request.exportRegister().get(), terminal);
      }
      int code = outcome(month.findings().problems());
      terminal.say(NextStep.of(next(open, month, decision, code).inWords()));
      return code;
    }
  }

  private BillingDecision decide(OpenBook open, List<BilledDocument> before) {
    BillingOptions options =
        new BillingOptions(
            request.month(), request.includeEarlier(), request.correct(), open.visitsHeld());
    BillingDecision decision = MonthBilling.decide(open.jobs(), before, options);
    request
        .correct()
        .ifPresent(number -> CorrectionAsked.check(number, before, decision, request.month()));
    return decision;
  }

  private AfterMonthEnd next(OpenBook open, MadeMonth month, BillingDecision decision, int code) {
    YearMonth ran = request.month();
    boolean empty = decision.month().isEmpty() && !LastVisits.any(open, ran);
    return new AfterMonthEnd(
        new Typing(request.book(), request.out(), request.register(), machine.headings()),
        ran,
        Places.reports(request.book(), request.out()).resolve(ran.toString()).resolve("index.html"),
        code == ROWS_HELD,
        month.findings().waiting().count() > 0,
        decision.month().stream().anyMatch(each -> each.state() == DocumentState.DRAFT),
        LastVisits.month(open, machine.today()).filter(last -> empty && !last.equals(ran)));
  }

  private void tellWaiting(WaitingPayments waiting) {
    if (waiting.count() > 0) {
      terminal.warn(Message.of("commands.monthEnd.waiting", waiting.count(), WaitingFile.PATH));
    }
  }

  /** What came of it, in a few words. */
  private Message done(OpenBook open, BillingDecision decision, Path page) {
    List<BilledDocument> counted =
        decision.month().stream().filter(BilledDocument::counts).toList();
    return counted.isEmpty()
        ? Message.of("commands.monthEnd.nothing", request.month(), page.toString())
        : Message.of(
            "commands.monthEnd.done",
            request.month(),
            new MonthSum(open.book().settings().currency(), counted).inWords(),
            page.toString());
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
      terminal.warn(Message.of("commands.monthEnd.held", held));
      return ROWS_HELD;
    }
    return DONE;
  }
}

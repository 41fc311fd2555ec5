package clenchbook.commands;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.LastAsked;
import clenchbook.billing.MonthBilling;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.commands.mailing.Dispatch;
import clenchbook.commands.mailing.RepeatedMail;
import clenchbook.commands.mailing.SendRequest;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.NextStep;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Places;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.commands.opening.Typing;
import clenchbook.commands.printing.Printing;
import clenchbook.delivery.CredentialReader;
import clenchbook.delivery.message.MailAddress;
import clenchbook.problem.Severity;
import clenchbook.register.Register;
import clenchbook.register.SeenPayment;
import clenchbook.texts.Message;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Sends a month's documents: names them, asks, writes them with each owner's mail and the list of
 * those to print, marks them issued, brings the month's page up to date, and where asked hands the
 * mails to the mail server.
 *
 * <p>What goes out is what was last laid down; where the book would make it otherwise now, nothing
 * is issued. All files are written before the register marks anything, in one step; cut short
 * anywhere, the next run ends the same.
 */
public final class SendRun {
  private final SendRequest request;
  private final Machine machine;
  private final CredentialReader passwords;
  private final Terminal terminal;
  private boolean toIssue;

  /**
   * Makes the run.
   *
   * @param request what was asked
   * @param machine the machine
   * @param passwords where the password of the mail server is kept
   * @param terminal where it speaks
   */
  public SendRun(
      SendRequest request, Machine machine, CredentialReader passwords, Terminal terminal) {
    this.request = request;
    this.machine = machine;
    this.passwords = passwords;
    this.terminal = terminal;
  }

  /**
   * Runs it.
   *
   * @return the exit code: 0 done; 1 done, but rows are held back, or mails are refused, put off or
   *     unsure
   * @throws RunFault when it could not be done
   */
  public int run() {
    try (Printing printing = new Printing()) {
      OpenBook open = OpenBook.read(request.book(), machine, terminal).withVisits().withCurrency();
      open.warnOfLaterDates(machine.today(), terminal);
      open.tellAssumptions(terminal);
      open.warnOfOpeningDate(request.month(), terminal);
      Optional<MailAddress> from = from(open.book().settings());
      Optional<Dispatch> dispatch =
          request.deliver()
              ? Optional.of(dispatch(open.book().settings(), from))
              : Optional.empty();
      Outbox outbox = new Outbox(from, OpenBook.folder(request.book()), folder(), terminal);
      Path registerFile = request.register().in(open, reports());
      MadeMonth month = send(open, outbox, registerFile, printing);
      boolean allGone = true;
      if (dispatch.isPresent()) {
        allGone = dispatch.get().send(outbox.mails(), registerFile, terminal);
        afterDelivery(open, outbox, month, registerFile);
      }
      boolean held = rowsHeld(open);
      terminal.say(NextStep.of(next(open, outbox, allGone, held).inWords()));
      return allGone && !held ? MonthEndRun.DONE : MonthEndRun.ROWS_HELD;
    } finally {
      terminal.clear();
    }
  }

  private AfterSend next(OpenBook open, Outbox outbox, boolean allGone, boolean held) {
    return new AfterSend(
        new Typing(request.book(), request.out(), request.register(), machine.headings()),
        request,
        toIssue,
        !outbox.mails().isEmpty(),
        outbox.printed(),
        !open.book().settings().text(Setting.SMTP_HOST).isBlank(),
        allGone,
        held);
  }

  private Dispatch dispatch(Settings settings, Optional<MailAddress> from) {
    if (from.isEmpty()) {
      throw new RunFault(Message.of("commands.mail.noFrom"));
    }
    return Dispatch.prepare(request, settings, passwords, machine.today());
  }

  /** The sender: From address, else the business's own address. */
  private static Optional<MailAddress> from(Settings settings) {
    return MailAddress.parse(settings.text(Setting.FROM_ADDRESS))
        .or(() -> MailAddress.parse(settings.text(Setting.EMAIL)));
  }

  private boolean rowsHeld(OpenBook open) {
    boolean held = open.problems().stream().anyMatch(p -> p.severity() == Severity.HELD);
    if (held) {
      terminal.warn(Message.of("commands.send.held"));
    }
    return held;
  }

  private MadeMonth send(OpenBook open, Outbox outbox, Path registerFile, Printing printing) {
    MonthSum sum = new MonthSum(open.book().settings().currency(), List.of());
    if (!request.preview() && !Files.exists(registerFile)) {
      // Nothing was ever laid down; no register is begun only to say so.
      new LaidDown(List.of(), decide(open, List.of())).refuse(sum, terminal);
    }
    try (Register register = Register.open(registerFile)) {
      List<BilledDocument> before = register.documents();
      request.register().checkBook(open, registerFile, before);
      terminal.progress(Message.of("commands.progress.month", request.month()));
      BillingDecision decision = decide(open, before);
      MadeMonth month =
          MadeMonth.begin(
              open,
              machine,
              decision,
              request.month(),
              Places.reports(request.book(), request.out()),
              register,
              printing,
              terminal);
      if (!request.preview()) {
        LaidDown laid = new LaidDown(before, decision);
        laid.compare(month.drafts(), register::pdf);
        laid.compare(month.eInvoices(), register::eInvoice);
        laid.refuse(sum, terminal);
      }
      if (before.isEmpty()) {
        RegisterChoice.tellBeginning(open, registerFile, reports(), request.month(), terminal);
      }
      outbox.sort(month, new RepeatedMail(request.again()));
      month.findings().differencesInWords().forEach(terminal::warn);
      ShownByPayments.tell(before, decision, open.book().payments(), sum, terminal);
      List<BilledDocument> drafts = drafts(decision);
      toIssue = !drafts.isEmpty();
      name(drafts, sum);
      return request.preview()
          ? preview(open, outbox, month, decision, register)
          : issue(open, outbox, month, decision, drafts, register);
    }
  }

  private BillingDecision decide(OpenBook open, List<BilledDocument> documents) {
    return MonthBilling.decide(
        open.jobs(),
        documents,
        LastAsked.of(open.jobs(), documents, request.month(), open.visitsHeld()));
  }

  private static List<BilledDocument> drafts(BillingDecision decision) {
    return decision.month().stream()
        .filter(document -> document.state() == DocumentState.DRAFT)
        .toList();
  }

  private void name(List<BilledDocument> drafts, MonthSum sum) {
    drafts.forEach(document -> terminal.say(sum.line(document)));
    if (drafts.isEmpty()) {
      terminal.say(Message.of("commands.send.nothingLeft", request.month()));
      return;
    }
    Message all = new MonthSum(sum.currency(), drafts).inWords();
    terminal.say(
        request.preview()
            ? Message.of("commands.send.toIssue", all)
            : Message.of("commands.send.toIssueNow", all));
  }

  private MadeMonth preview(
      OpenBook open, Outbox outbox, MadeMonth month, BillingDecision decision, Register register) {
    month.record(register, decision.documents(), SeenPayment.of(open.book().payments()));
    writeMonth(open, outbox, month, Message.of("commands.disk.nothingSent"));
    outbox.write(facts(open), sentBefore(decision));
    terminal.say(Message.of("commands.send.preview"));
    return month;
  }

  private MadeMonth issue(
      OpenBook open,
      Outbox outbox,
      MadeMonth month,
      BillingDecision decision,
      List<BilledDocument> drafts,
      Register register) {
    if (!drafts.isEmpty()
        && !request.yes()
        && !terminal.agrees(Message.of("commands.send.question", drafts.size()))) {
      throw new RunFault(Message.of("commands.send.saidNo"));
    }
    writeMonth(open, outbox, month, Message.of("commands.disk.nothingSent"));
    outbox.write(facts(open), sentBefore(decision));
    List<BilledDocument> issued =
        decision.documents().stream()
            .map(each -> drafts.contains(each) ? each.in(DocumentState.ISSUED) : each)
            .toList();
    month.record(register, issued, List.of());
    if (drafts.isEmpty()) {
      return month;
    }
    terminal.say(Message.of("commands.send.issued", drafts.size()));
    return movedOn(open, outbox, month, register);
  }

  private static boolean sentBefore(BillingDecision decision) {
    return decision.month().stream().anyMatch(document -> document.state().fixed());
  }

  /** Brings page and figures up to what the register says now. */
  private MadeMonth movedOn(OpenBook open, Outbox outbox, MadeMonth month, Register register) {
    MadeMonth now = month.movedOn(decide(open, register.documents()), register);
    writeMonth(open, outbox, now, Message.of("commands.disk.issuedNothingLost"));
    return now;
  }

  private void afterDelivery(OpenBook open, Outbox outbox, MadeMonth month, Path registerFile) {
    try (Register register = Register.open(registerFile)) {
      movedOn(open, outbox, month, register);
    }
  }

  private Path reports() {
    return Places.reports(request.book(), request.out());
  }

  private Path folder() {
    return reports().resolve(request.month().toString());
  }

  private void writeMonth(OpenBook open, Outbox outbox, MadeMonth month, Message refused) {
    month.write(folder(), month.files(outbox.paths()), facts(open), refused);
  }

  private Map<String, Object> facts(OpenBook open) {
    Map<String, Object> asked = new LinkedHashMap<>();
    asked.put("month", request.month().toString());
    asked.put("preview", request.preview());
    return RunFacts.of("send", asked, open);
  }
}

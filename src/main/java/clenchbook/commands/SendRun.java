package clenchbook.commands;

import clenchbook.billing.LastAsked;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.commands.mailing.Dispatch;
import clenchbook.commands.mailing.MonthPost;
import clenchbook.commands.mailing.PostRoom;
import clenchbook.commands.mailing.RepeatedMail;
import clenchbook.commands.mailing.SendRequest;
import clenchbook.commands.opening.Count;
import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Places;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.commands.printing.PrintedMonth;
import clenchbook.commands.printing.Printing;
import clenchbook.delivery.CredentialReader;
import clenchbook.delivery.message.MailAddress;
import clenchbook.delivery.wording.WordingFault;
import clenchbook.print.files.OutputFolder;
import clenchbook.print.pdf.PdfDocuments;
import clenchbook.problem.Severity;
import clenchbook.register.Register;
import clenchbook.register.SeenPayment;
import clenchbook.reports.month.BilledMonth;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Sends a month's documents: writes each owner's mail and the list of those to print, marks the
 * documents issued, and where asked hands the mails to the mail server.
 *
 * <p>It bills the month as month-end does, so that what goes out is what the book says now; earlier
 * visits that month-end was told to include stay included.
 */
public final class SendRun {
  private final SendRequest request;
  private final Machine machine;
  private final CredentialReader passwords;
  private final Terminal terminal;

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
    try {
      OpenBook open = OpenBook.read(request.book(), machine, terminal).withVisits();
      open.warnOfLaterDates(machine.today(), terminal);
      Optional<MailAddress> from = from(open.book().settings());
      Optional<Dispatch> dispatch =
          request.deliver()
              ? Optional.of(dispatch(open.book().settings(), from))
              : Optional.empty();
      PostRoom room = new PostRoom(from, OpenBook.folder(request.book()));
      Path registerFile =
          request.register().in(open, Places.reports(request.book(), request.out()));
      issue(open, room, registerFile);
      boolean allGone =
          dispatch.isEmpty() || dispatch.get().send(room.mails(), registerFile, terminal);
      return allGone && !rowsHeld(open) ? MonthEndRun.DONE : MonthEndRun.ROWS_HELD;
    } finally {
      terminal.clear();
    }
  }

  private Dispatch dispatch(Settings settings, Optional<MailAddress> from) {
    if (from.isEmpty()) {
      throw new RunFault("Settings have no From address that mail can be sent from");
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
      terminal.warn("rows are held back; see check or the month's problems.csv");
    }
    return held;
  }

  /** Writes the outbox between recording the documents and marking them issued. */
  private void issue(OpenBook open, PostRoom room, Path registerFile) {
    if (request.preview() && !Files.exists(registerFile)) {
      write(open, room, print(open, List.of(), Optional.empty()));
      terminal.say("Preview: nothing was marked and nothing was sent.");
      return;
    }
    try (Register register = Register.open(registerFile)) {
      List<BilledDocument> before = register.documents();
      request.register().checkBook(open, registerFile, before);
      PrintedMonth printed = print(open, before, Optional.of(register));
      if (request.preview()) {
        write(open, room, printed);
        terminal.say("Preview: nothing was marked and nothing was sent.");
        return;
      }
      List<BilledDocument> documents = printed.month().billing().documents();
      register.record(
          documents,
          printed.drafts(),
          printed.eInvoices(),
          SeenPayment.of(open.book().payments()),
          Map.of());
      write(open, room, printed);
      markIssued(printed.month(), register);
    }
  }

  private PrintedMonth print(
      OpenBook open, List<BilledDocument> documents, Optional<Register> register) {
    terminal.progress("working out " + request.month());
    BilledMonth month =
        BilledMonth.of(
            open.jobs(),
            documents,
            LastAsked.of(open.jobs(), documents, request.month(), open.visitsHeld()));
    PdfDocuments printer =
        Printing.documents(open.book().settings(), request.book(), request.month().atEndOfMonth());
    return PrintedMonth.of(month, register, printer, terminal);
  }

  private void write(OpenBook open, PostRoom room, PrintedMonth printed) {
    room.sort(
        new MonthPost(printed.month()).posts(printed.files()), new RepeatedMail(request.again()));
    Path folder =
        Places.reports(request.book(), request.out())
            .resolve(request.month().toString())
            .resolve("outbox");
    try {
      OutputFolder.write(folder, room.files(), facts(open));
    } catch (IOException e) {
      throw DiskTrouble.writing("the mails", folder, e, "nothing was sent");
    }
    tell(room, folder);
  }

  private Map<String, Object> facts(OpenBook open) {
    Map<String, Object> asked = new LinkedHashMap<>();
    asked.put("month", request.month().toString());
    return RunFacts.of("send", asked, open);
  }

  private void tell(PostRoom room, Path folder) {
    room.wordingFaults().stream().map(WordingFault::line).forEach(terminal::warn);
    room.unreadable().forEach(terminal::warn);
    terminal.say(Count.of(room.mails().size(), "mail") + " in " + folder + " to send or look at");
    if (room.printed() > 0) {
      terminal.say(Count.of(room.printed(), "owner") + " to print: " + PostRoom.PRINT_LIST);
    }
  }

  private void markIssued(BilledMonth month, Register register) {
    List<String> drafts =
        month.billing().month().stream()
            .filter(document -> document.state() == DocumentState.DRAFT)
            .map(BilledDocument::number)
            .toList();
    register.move(drafts, DocumentState.ISSUED);
    if (!drafts.isEmpty()) {
      terminal.say(
          Count.of(drafts.size(), "document")
              + " issued: from now on a change in the book makes a credit note");
    }
  }
}

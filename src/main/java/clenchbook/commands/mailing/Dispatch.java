package clenchbook.commands.mailing;

import clenchbook.billing.documents.DocumentState;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.commands.opening.Count;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.delivery.CredentialFault;
import clenchbook.delivery.CredentialReader;
import clenchbook.delivery.DeliveryOutcome;
import clenchbook.delivery.DeliveryOutcome.Result;
import clenchbook.delivery.DeliveryReport;
import clenchbook.delivery.Pace;
import clenchbook.delivery.QueuedMail;
import clenchbook.delivery.SmtpCredential;
import clenchbook.delivery.SmtpDelivery;
import clenchbook.delivery.SmtpServer;
import clenchbook.register.MailRegister;
import clenchbook.register.Register;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** Hands the month's mails to the mail server and says what became of each. */
public final class Dispatch {
  private final SmtpServer server;
  private final Pace pace;
  private final Clock clock;

  private Dispatch(SmtpServer server, Pace pace, Clock clock) {
    this.server = server;
    this.pace = pace;
    this.clock = clock;
  }

  /**
   * Finds the server and the password before anything is written or marked.
   *
   * @throws RunFault where the book names no server or the password is missing or another's
   */
  public static Dispatch prepare(
      SendRequest request, Settings settings, CredentialReader passwords, LocalDate today) {
    String host = settings.text(Setting.SMTP_HOST).strip();
    if (host.isEmpty()) {
      throw new RunFault("Settings have no SMTP host; write it there, or send the outbox by hand");
    }
    int port =
        settings.findNumber(Setting.SMTP_PORT).map(Number::intValue).orElse(SmtpServer.SUBMISSION);
    try {
      SmtpServer server =
          SmtpServer.of(host, port, credential(settings, host, passwords), request.protection());
      return new Dispatch(server, Pace.GENTLE.withPause(request.pause()), clock(today));
    } catch (CredentialFault fault) {
      throw new RunFault(String.valueOf(fault.getMessage()), fault);
    } catch (IllegalArgumentException unusable) {
      throw new RunFault(
          "Settings: SMTP host or port can't be used: " + unusable.getMessage(), unusable);
    }
  }

  private static Optional<SmtpCredential> credential(
      Settings settings, String host, CredentialReader passwords) throws CredentialFault {
    String user = settings.text(Setting.SMTP_USER).strip();
    return user.isEmpty() ? Optional.empty() : Optional.of(passwords.read(host, user));
  }

  /** The machine's time of day on the day of the run. */
  private static Clock clock(LocalDate today) {
    Clock now = Clock.system(ZoneId.systemDefault());
    long days = ChronoUnit.DAYS.between(LocalDate.now(now), today);
    return Clock.offset(now, Duration.ofDays(days));
  }

  /**
   * Delivers what has not been delivered.
   *
   * @return whether every mail has reached the server, now or before
   * @throws RunFault where the run stopped before a single mail had
   */
  public boolean send(List<QueuedMail> mails, Path registerFile, Terminal terminal) {
    DeliveryReport report;
    try (Register register = Register.open(registerFile);
        MailRegister ledger = register.mails(UUID.randomUUID().toString())) {
      report =
          new SmtpDelivery(server, pace, clock)
              .deliver(mails, ledger, (outcome, done, all) -> tell(outcome, done, all, terminal));
    }
    markDelivered(report, registerFile);
    return summed(report, terminal);
  }

  private static void markDelivered(DeliveryReport report, Path registerFile) {
    List<String> numbers =
        report.outcomes().stream()
            .filter(outcome -> !outcome.needsAttention())
            .flatMap(outcome -> Arrays.stream(outcome.id().documents().split(" ")))
            .filter(number -> !number.isEmpty())
            .toList();
    try (Register register = Register.open(registerFile)) {
      register.move(numbers, DocumentState.DELIVERED);
    }
  }

  private static void tell(DeliveryOutcome outcome, int done, int all, Terminal terminal) {
    if (outcome.result() == Result.PUT_OFF) {
      terminal.progress(
          done + " of " + all + ": waiting to try " + outcome.id().owner() + " again");
    } else {
      terminal.say(line(outcome));
      terminal.progress(done + " of " + all);
    }
  }

  private static String line(DeliveryOutcome outcome) {
    String word = outcome.result().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    String detail = outcome.detail().isEmpty() ? "" : " (" + outcome.detail() + ")";
    return word + ": " + outcome.id().line() + detail;
  }

  private boolean summed(DeliveryReport report, Terminal terminal) {
    String stopped = report.stopped().orElse("");
    report.outcomes().stream()
        .filter(outcome -> outcome.result() == Result.PUT_OFF && !outcome.detail().equals(stopped))
        .forEach(outcome -> terminal.warn(line(outcome)));
    long gone = report.count(Result.DELIVERED);
    if (!stopped.isEmpty()) {
      String stop = "stopped: " + stopped;
      if (gone == 0) {
        throw new RunFault(stop);
      }
      terminal.warn(stop);
    }
    terminal.say(
        Count.of(gone, "mail")
            + " delivered, "
            + report.count(Result.DELIVERED_BEFORE)
            + " before, "
            + report.count(Result.REFUSED)
            + " refused, "
            + report.count(Result.PUT_OFF)
            + " put off, "
            + report.count(Result.UNSURE)
            + " unsure");
    if (report.count(Result.UNSURE) > 0) {
      terminal.warn(
          "an unsure mail may have gone off: look among the sent mail or ask the owner, and if it"
              + " did not, send it with --again OWNER");
    }
    return report.isComplete();
  }
}

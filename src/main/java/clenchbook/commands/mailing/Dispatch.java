package clenchbook.commands.mailing;

import clenchbook.billing.documents.DocumentState;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
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
import clenchbook.delivery.UnusableServer;
import clenchbook.reading.texts.TextFiles;
import clenchbook.register.MailRegister;
import clenchbook.register.Register;
import clenchbook.texts.Message;
import clenchbook.texts.Texts;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
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
      throw new RunFault(Message.of("commands.mail.noHost"));
    }
    int port =
        settings.findNumber(Setting.SMTP_PORT).map(Number::intValue).orElse(SmtpServer.SUBMISSION);
    try {
      SmtpServer server =
          SmtpServer.of(host, port, credential(settings, host, passwords), request.protection());
      return new Dispatch(server, Pace.GENTLE.withPause(request.pause()), clock(today));
    } catch (CredentialFault fault) {
      throw new RunFault(fault.message(), fault);
    } catch (UnusableServer unusable) {
      throw new RunFault(Message.of("commands.mail.hostUnusable", unusable.message()), unusable);
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
          new SmtpDelivery(server, pace, clock, TextFiles.in(Texts.ENGLISH, ""))
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
      terminal.progress(Message.of("commands.mail.waiting", done, all, outcome.id().owner()));
    } else {
      terminal.say(line(outcome));
      terminal.progress(Message.of("commands.mail.progress", done, all));
    }
  }

  private static Message line(DeliveryOutcome outcome) {
    String mail = outcome.id().line();
    return outcome.detail().isEmpty()
        ? Message.of("commands.mail.line", word(outcome.result()), mail)
        : Message.of("commands.mail.lineWhy", word(outcome.result()), mail, outcome.detail());
  }

  private static Message word(Result result) {
    return switch (result) {
      case DELIVERED -> Message.of("commands.mail.delivered");
      case DELIVERED_BEFORE -> Message.of("commands.mail.deliveredBefore");
      case REFUSED -> Message.of("commands.mail.refused");
      case PUT_OFF -> Message.of("commands.mail.putOff");
      case UNSURE -> Message.of("commands.mail.unsure");
    };
  }

  private boolean summed(DeliveryReport report, Terminal terminal) {
    Message stopped = report.stopped().orElse(Message.NONE);
    report.outcomes().stream()
        .filter(outcome -> outcome.result() == Result.PUT_OFF && !outcome.detail().equals(stopped))
        .forEach(outcome -> terminal.warn(line(outcome)));
    long gone = report.count(Result.DELIVERED);
    if (!stopped.isEmpty()) {
      Message stop = Message.of("commands.mail.stopped", stopped);
      if (gone == 0) {
        throw new RunFault(stop);
      }
      terminal.warn(stop);
    }
    terminal.say(
        Message.of(
            "commands.mail.sum",
            gone,
            report.count(Result.DELIVERED_BEFORE),
            report.count(Result.REFUSED),
            report.count(Result.PUT_OFF),
            report.count(Result.UNSURE)));
    if (report.count(Result.UNSURE) > 0) {
      terminal.warn(Message.of("commands.mail.howUnsure"));
    }
    return report.isComplete();
  }
}

package clenchbook.cli;

import clenchbook.commands.SendRun;
import clenchbook.commands.mailing.SendRequest;
import clenchbook.commands.opening.LastFullMonth;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.Terminal;
import clenchbook.delivery.SmtpServer.Protection;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.YearMonth;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The command {@code send}. */
@Command(
    description =
        "Each owner's mail as a file in the outbox, a list of those to print; --deliver sends.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Marks the month's invoices issued, as month-end or --preview last laid them down; what"
          + " would",
      "be otherwise now is named and nothing is issued. --preview marks nothing. An invoice that"
          + " is",
      "issued never changes. The mail server's password is kept outside the workbook; see"
          + " docs/mail.md."
    })
final class SendCommand implements Callable<Integer> {
  private static final int MILLIS = 1000;

  @Spec
  @SuppressWarnings("NullAway.Init") // set by the command line
  private CommandSpec spec;

  @Mixin private final BookOptions book = new BookOptions();

  @Option(
      names = "--month",
      paramLabel = "YYYY-MM",
      description = "The month; default: the last full one before the day of the run.")
  private Optional<YearMonth> month = Optional.empty();

  @Option(names = "--preview", description = "Write the mails and mark nothing.")
  private boolean preview;

  @Option(
      names = "--deliver",
      description = "Send over SMTP what has not been delivered. The line must be protected.")
  private boolean deliver;

  @Option(
      names = "--yes",
      description = "Issue without asking; where input is no terminal, nothing is asked anyway.")
  private boolean yes;

  @Option(
      names = "--again",
      paramLabel = "OWNER",
      description =
          "Send this owner's mail again, even if it was delivered or nobody knows. Repeatable.")
  private Set<String> again = new LinkedHashSet<>();

  @Option(
      names = "--pause",
      paramLabel = "SECONDS",
      defaultValue = "1",
      description = "Pause between two mails; default ${DEFAULT-VALUE}.")
  @SuppressWarnings("NullAway.Init") // set by the command line
  private BigDecimal pause;

  @Option(
      names = "--insecure-any-certificate",
      description = "Take any certificate of the mail server. Anyone on the way can pose as it.")
  private boolean anyCertificate;

  @Option(
      names = "--insecure-no-tls",
      description = "Send without TLS. The password can be read on the way.")
  private boolean noTls;

  @Override
  public Integer call() {
    refuseContradictions();
    Terminal terminal = book.terminal();
    SendRequest request =
        new SendRequest(
            book.book,
            LastFullMonth.of(month, book.machine().today(), terminal),
            book.out,
            book.register(),
            preview,
            deliver,
            yes,
            again,
            protection(),
            Duration.ofMillis(pause.multiply(BigDecimal.valueOf(MILLIS)).longValue()));
    return new SendRun(request, book.machine(), Machine.mailPasswords(), terminal).run();
  }

  private void refuseContradictions() {
    if (preview && deliver) {
      throw wrong(Message.of("cli.previewSends"));
    }
    if (!deliver && !again.isEmpty()) {
      throw wrong(Message.of("cli.againAlone"));
    }
    if (pause.signum() < 0 || pause.compareTo(BigDecimal.valueOf(3600)) > 0) {
      throw wrong(Message.of("cli.pause"));
    }
  }

  private CommandLine.ParameterException wrong(Message what) {
    return WrongUsage.because(spec.commandLine(), what);
  }

  private Protection protection() {
    if (noTls) {
      return Protection.NONE;
    }
    return anyCertificate ? Protection.ANY_CERTIFICATE : Protection.CHECKED;
  }
}

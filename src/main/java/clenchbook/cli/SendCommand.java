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
    description = "cli.command.send",
    mixinStandardHelpOptions = true,
    footer = {"", "cli.command.sendFoot"})
final class SendCommand implements Callable<Integer> {
  private static final int MILLIS = 1000;

  @Spec
  @SuppressWarnings("NullAway.Init") // set by the command line
  private CommandSpec spec;

  @Mixin private final BookOptions book = new BookOptions();

  @Option(names = "--month", paramLabel = "YYYY-MM", descriptionKey = "cli.help.month")
  private Optional<YearMonth> month = Optional.empty();

  @Option(names = "--preview", descriptionKey = "cli.help.preview")
  private boolean preview;

  @Option(names = "--deliver", descriptionKey = "cli.help.deliver")
  private boolean deliver;

  @Option(names = "--yes", descriptionKey = "cli.help.yes")
  private boolean yes;

  @Option(names = "--again", paramLabel = "OWNER", descriptionKey = "cli.help.again")
  private Set<String> again = new LinkedHashSet<>();

  @Option(
      names = "--pause",
      paramLabel = "SECONDS",
      defaultValue = "1",
      descriptionKey = "cli.help.pause")
  @SuppressWarnings("NullAway.Init") // set by the command line
  private BigDecimal pause;

  @Option(names = "--insecure-any-certificate", descriptionKey = "cli.help.anyCertificate")
  private boolean anyCertificate;

  @Option(names = "--insecure-no-tls", descriptionKey = "cli.help.noTls")
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

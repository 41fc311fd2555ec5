package clenchbook.delivery;

import clenchbook.billing.mails.MailId;
import clenchbook.delivery.SmtpServer.Protection;
import clenchbook.delivery.message.OutgoingMail;
import clenchbook.register.MailRegister;
import clenchbook.register.Register;
import clenchbook.texts.InEnglish;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A run of its own process that delivers a month's mails, to be killed at any moment. */
final class KilledSender {
  private KilledSender() {}

  /**
   * Delivers and prints each outcome.
   *
   * @param arguments the server's port, the register's file, the certificate's folder, how many
   *     owners
   */
  public static void main(String[] arguments) {
    int port = Integer.parseInt(arguments[0]);
    LoopbackCertificate certificate = LoopbackCertificate.of("localhost", Path.of(arguments[2]));
    SmtpLine line = new SmtpLine(server(port), Optional.of(certificate.trustingSockets()));
    try (Register register = Register.open(Path.of(arguments[1]));
        MailRegister ledger = register.mails(UUID.randomUUID().toString())) {
      new SmtpDelivery(
              line,
              new Pace(Duration.ZERO, List.of()),
              Clock.systemUTC(),
              InEnglish.TEXTS,
              wait -> {})
          .deliver(
              mails(Integer.parseInt(arguments[3])),
              ledger,
              (outcome, done, all) ->
                  System.out.println(outcome.id().owner() + " " + outcome.result()));
    }
  }

  private static SmtpServer server(int port) {
    return new SmtpServer(
        "localhost",
        port,
        false,
        Optional.of(
            new SmtpCredential("localhost", LoopbackSmtpServer.USER, LoopbackSmtpServer.PASSWORD)),
        Protection.CHECKED,
        Duration.ofSeconds(20));
  }

  static List<QueuedMail> mails(int owners) {
    List<QueuedMail> mails = new ArrayList<>();
    for (int i = 0; i < owners; i++) {
      OutgoingMail mail = SampleMail.to("Owner " + i, "owner" + i + "@stable.example");
      mails.add(new QueuedMail(new MailId(mail.owner(), "2026-10", "2026-" + i), mail, false));
    }
    return mails;
  }
}

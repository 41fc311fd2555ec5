package clenchbook.delivery;

import clenchbook.billing.mails.MailId;
import clenchbook.delivery.DeliveryOutcome.Result;
import clenchbook.delivery.LoopbackSmtpServer.Script;
import clenchbook.delivery.SmtpServer.Protection;
import clenchbook.delivery.message.Attachment;
import clenchbook.delivery.message.OutgoingMail;
import clenchbook.register.MailRegister;
import clenchbook.register.Register;
import clenchbook.texts.InEnglish;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

/**
 * How many mails a second go over one kept, protected line to a server on this machine, each step
 * synced to disk. Prints the number.
 */
public final class DeliveryPace {
  private static final int MAILS = 400;
  private static final int INVOICE_BYTES = 40_000;

  private DeliveryPace() {}

  /** {@code DeliveryPace FOLDER}, an empty folder for the register. */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectories(Path.of(args[0]));
    LoopbackCertificate certificate = LoopbackCertificate.of("localhost", folder);
    List<QueuedMail> mails = mails();
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, Script.NONE);
        Register register = Register.open(folder.resolve("pace.register.db"));
        MailRegister ledger = register.mails("pace")) {
      SmtpLine line = new SmtpLine(server(server), Optional.of(certificate.trustingSockets()));
      SmtpDelivery delivery =
          new SmtpDelivery(
              line,
              new Pace(Duration.ZERO, List.of()),
              Clock.systemUTC(),
              InEnglish.TEXTS,
              wait -> {});
      long start = System.nanoTime();
      DeliveryReport report = delivery.deliver(mails, ledger, (o, d, a) -> {});
      double seconds = (System.nanoTime() - start) / 1e9;
      if (report.count(Result.DELIVERED) != MAILS) {
        throw new IllegalStateException("not all were delivered");
      }
      System.out.printf(Locale.ROOT, "%.1f%n", MAILS / seconds);
    }
    System.exit(0);
  }

  private static SmtpServer server(LoopbackSmtpServer server) {
    SmtpCredential credential =
        new SmtpCredential("localhost", LoopbackSmtpServer.USER, LoopbackSmtpServer.PASSWORD);
    return new SmtpServer(
        "localhost",
        server.port(),
        false,
        Optional.of(credential),
        Protection.CHECKED,
        Duration.ofSeconds(20));
  }

  private static List<QueuedMail> mails() {
    Random random = new Random(7);
    List<QueuedMail> mails = new ArrayList<>();
    for (int i = 0; i < MAILS; i++) {
      byte[] invoice = new byte[INVOICE_BYTES];
      random.nextBytes(invoice);
      OutgoingMail mail =
          SampleMail.mail(
              "Owner " + i,
              "owner" + i + "@stable.example",
              "Invoice 2026-" + i,
              Attachment.pdf("2026-" + i + ".pdf", invoice),
              Attachment.pdf("statement.pdf", invoice));
      mails.add(new QueuedMail(new MailId(mail.owner(), "2026-10", "2026-" + i), mail, false));
    }
    return mails;
  }
}

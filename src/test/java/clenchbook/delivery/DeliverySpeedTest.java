package clenchbook.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.delivery.DeliveryOutcome.Result;
import clenchbook.delivery.LoopbackSmtpServer.Script;
import clenchbook.delivery.SmtpServer.Protection;
import clenchbook.register.MailRegister;
import clenchbook.register.Register;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How many mails a second go over one kept, protected line, each step synced to disk. */
@Tag("demand")
class DeliverySpeedTest {
  private static final int MAILS = 400;
  private static final int INVOICE_BYTES = 40_000;
  private static final int WANTED_A_SECOND = 30;

  @TempDir Path folder;

  @Test
  void a_kept_line_carries_thirty_mails_a_second() throws Exception {
    LoopbackCertificate certificate = LoopbackCertificate.of("localhost", folder);
    List<QueuedMail> mails = mails();
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, Script.NONE);
        Register register = Register.open(folder.resolve("r.db"));
        MailRegister ledger = new MailRegister(register.unlocked(), "speed")) {
      SmtpLine line = new SmtpLine(server(server), Optional.of(certificate.trustingSockets()));
      SmtpDelivery delivery =
          new SmtpDelivery(line, new Pace(Duration.ZERO, List.of()), Clock.systemUTC(), wait -> {});
      long start = System.nanoTime();
      DeliveryReport report = delivery.deliver(mails, ledger, (o, d, a) -> {});
      double seconds = (System.nanoTime() - start) / 1e9;

      assertEquals(MAILS, report.count(Result.DELIVERED));
      System.out.printf(
          Locale.ROOT, "%d mails in %.2f s: %.0f a second%n", MAILS, seconds, MAILS / seconds);
      assertTrue(MAILS / seconds >= WANTED_A_SECOND);
    }
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

package clenchbook.delivery;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.mails.MailId;
import clenchbook.delivery.DeliveryOutcome.Result;
import clenchbook.delivery.SmtpServer.Protection;
import clenchbook.delivery.message.Attachment;
import clenchbook.delivery.message.OutgoingMail;
import clenchbook.texts.InEnglish;
import com.icegreen.greenmail.user.UserException;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.apache.james.mime4j.dom.Entity;
import org.apache.james.mime4j.dom.Message;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Delivery to GreenMail, a mail server of another make, over real sockets with TLS and login. */
class GreenMailDeliveryTest {
  private static final String USER = "office@alder.example";
  private static final String PASSWORD = "horse-shoe-nail-7";
  private static final Pace AT_ONCE = new Pace(Duration.ZERO, List.of());

  @TempDir static Path keys;
  private static LoopbackCertificate certificate;
  private static GreenMail greenMail;

  @BeforeAll
  static void start() {
    certificate = LoopbackCertificate.of("localhost", keys);
    System.setProperty("greenmail.tls.keystore.file", certificate.file().toString());
    System.setProperty("greenmail.tls.keystore.password", LoopbackCertificate.PASSWORD);
    ServerSetup setup = new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTPS);
    setup.setServerStartupTimeout(20_000);
    greenMail = new GreenMail(setup);
    greenMail.getUserManager().setAuthRequired(true);
    greenMail.start();
  }

  @BeforeEach
  void empty() throws UserException {
    greenMail.reset();
    greenMail.getUserManager().setAuthRequired(true);
    greenMail.setUser(USER, USER, PASSWORD);
  }

  @AfterAll
  static void stop() {
    greenMail.stop();
  }

  @Test
  void a_mail_with_names_outside_ascii_arrives_whole() throws Exception {
    Attachment file = SampleMail.pdf("2026-0007 Łukasz Żółć.pdf");
    OutgoingMail mail =
        SampleMail.mail("Łukasz Żółć", "lukasz@stable.example", "Faktura № 7 – październik", file);

    DeliveryReport report = deliver(PASSWORD, mail);

    assertTrue(report.isComplete(), report::toString);
    Message read = SecondParser.read(received(0));
    assertEquals("Faktura № 7 – październik", read.getSubject());
    Entity attached = SecondParser.leaves(read).get(2);
    assertEquals("2026-0007 Łukasz Żółć.pdf", attached.getFilename());
    assertArrayEquals(file.bytes(), SecondParser.bytes(attached));
  }

  @Test
  void thirty_owners_get_one_each() {
    OutgoingMail[] mails = new OutgoingMail[30];
    for (int i = 0; i < mails.length; i++) {
      mails[i] = SampleMail.to("Owner " + i, "owner" + i + "@stable.example");
    }

    DeliveryReport report = deliver(PASSWORD, mails);

    assertEquals(30, report.count(Result.DELIVERED), report::toString);
    assertEquals(30, greenMail.getReceivedMessages().length);
    for (OutgoingMail mail : mails) {
      assertEquals(1, greenMail.getReceivedMessagesForDomain(mail.to().get(0).text()).length);
    }
  }

  @Test
  void a_wrong_password_is_said() {
    DeliveryReport report = deliver("wrong", SampleMail.to("Rosa", "rosa@stable.example"));

    assertTrue(
        report
            .stopped()
            .map(InEnglish::said)
            .orElse("")
            .contains("does not accept the user and password"),
        report::toString);
    assertEquals(0, greenMail.getReceivedMessages().length);
  }

  private static DeliveryReport deliver(String password, OutgoingMail... mails) {
    SmtpServer server =
        new SmtpServer(
            "localhost",
            greenMail.getSmtps().getPort(),
            true,
            Optional.of(new SmtpCredential("localhost", USER, password)),
            Protection.CHECKED,
            Duration.ofSeconds(20));
    SmtpLine line = new SmtpLine(server, Optional.of(certificate.trustingSockets()));
    List<QueuedMail> queue =
        List.of(mails).stream()
            .map(mail -> new QueuedMail(new MailId(mail.owner(), "2026-10", "7"), mail, false))
            .toList();
    return new SmtpDelivery(line, AT_ONCE, Clock.systemUTC(), InEnglish.TEXTS, wait -> {})
        .deliver(queue, new MailLedgerInMemory(), (outcome, done, all) -> {});
  }

  private static byte[] received(int which) throws MessagingException, IOException {
    MimeMessage message = greenMail.getReceivedMessages()[which];
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    message.writeTo(bytes);
    return bytes.toByteArray();
  }
}

package clenchbook.delivery;

import clenchbook.billing.mails.MailId;
import clenchbook.delivery.SmtpServer.Protection;
import clenchbook.delivery.message.OutgoingMail;
import clenchbook.register.MailRegister;
import clenchbook.register.Register;
import clenchbook.texts.InEnglish;
import clenchbook.texts.Message;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/**
 * Deliveries to a mail server on this machine that does as its script says, with the register's own
 * ledger.
 */
abstract class LoopbackDelivery {
  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-02T18:00:00Z"), ZoneOffset.UTC);

  static final Pace THREE_ROUNDS =
      new Pace(Duration.ofSeconds(1), List.of(Duration.ofSeconds(5), Duration.ofSeconds(30)));

  static final SmtpCredential CREDENTIAL =
      new SmtpCredential("localhost", LoopbackSmtpServer.USER, LoopbackSmtpServer.PASSWORD);

  @TempDir static Path keys;
  static LoopbackCertificate certificate;

  @TempDir Path folder;
  Register register;
  MailRegister ledger;
  final List<Duration> slept = new ArrayList<>();
  final List<String> progress = new ArrayList<>();

  @BeforeAll
  static void make_a_certificate() {
    certificate = LoopbackCertificate.of("localhost", keys);
  }

  @BeforeEach
  void open_a_register() {
    register = Register.open(folder.resolve("register.db"));
    ledger = register.mails("first run");
  }

  @AfterEach
  void close_the_register() {
    register.close();
  }

  DeliveryReport secondRun(LoopbackSmtpServer server, List<QueuedMail> mails) {
    ledger = register.mails("second run");
    return deliver(server, mails);
  }

  DeliveryReport deliver(LoopbackSmtpServer server, List<QueuedMail> mails) {
    return deliver(server(server, Protection.CHECKED, Duration.ofSeconds(5)), mails);
  }

  DeliveryReport deliver(SmtpServer server, List<QueuedMail> mails) {
    return delivery(server)
        .deliver(
            mails,
            ledger,
            (outcome, done, all) -> progress.add(outcome.result() + " " + done + "/" + all));
  }

  SmtpDelivery delivery(SmtpServer server) {
    SmtpLine line = new SmtpLine(server, Optional.of(certificate.trustingSockets()));
    return new SmtpDelivery(line, THREE_ROUNDS, CLOCK, InEnglish.TEXTS, slept::add);
  }

  static SmtpServer server(LoopbackSmtpServer server, Protection protection, Duration wait) {
    return new SmtpServer(
        "localhost", server.port(), false, Optional.of(CREDENTIAL), protection, wait);
  }

  /** Why the run ended early, in English; empty where it did not. */
  static String stopped(DeliveryReport report) {
    return InEnglish.said(report.stopped().orElse(Message.NONE));
  }

  static List<QueuedMail> three() {
    return List.of(
        queued(SampleMail.to("Anna", "anna@stable.example")),
        queued(SampleMail.to("Ben", "ben@stable.example")),
        queued(SampleMail.to("Cleo", "cleo@stable.example")));
  }

  static QueuedMail queued(OutgoingMail mail) {
    return new QueuedMail(new MailId(mail.owner(), "2026-10", "2026-0007"), mail, false);
  }
}

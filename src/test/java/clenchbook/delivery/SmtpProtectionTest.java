package clenchbook.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.delivery.DeliveryOutcome.Result;
import clenchbook.delivery.LoopbackSmtpServer.Act;
import clenchbook.delivery.LoopbackSmtpServer.Script;
import clenchbook.delivery.SmtpServer.Protection;
import clenchbook.texts.InEnglish;
import clenchbook.texts.Message;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.text.Normalizer.Form;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What keeps mails and password from strangers, over real sockets. */
class SmtpProtectionTest extends LoopbackDelivery {
  @Test
  void nothing_goes_to_a_server_without_tls() {
    try (LoopbackSmtpServer server = LoopbackSmtpServer.plain(Script.NONE)) {
      DeliveryReport report = deliver(server, three());

      assertTrue(stopped(report).contains("offers no TLS"), report::toString);
      assertEquals(3, report.count(Result.PUT_OFF));
      assertTrue(
          server.heard().stream().noneMatch(l -> l.startsWith("AUTH")), server.heard()::toString);
      assertEquals(0, server.timesOf("MAIL"));
    }
  }

  @Test
  void nothing_goes_to_a_server_whose_certificate_is_not_trusted() {
    LoopbackCertificate stranger = LoopbackCertificate.of("localhost", folder);
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(stranger, Script.NONE)) {
      DeliveryReport report = deliver(server, three());

      assertTrue(stopped(report).contains("certificate"), report::toString);
      assertEquals(0, server.timesOf("AUTH") + server.timesOf("MAIL"));
    }
  }

  @Test
  void nothing_goes_to_a_server_whose_certificate_bears_another_name() {
    LoopbackCertificate other = LoopbackCertificate.of("mail.example", folder);
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(other, Script.NONE)) {
      SmtpServer settings = server(server, Protection.CHECKED, Duration.ofSeconds(5));
      SmtpLine line = new SmtpLine(settings, Optional.of(other.trustingSockets()));
      DeliveryReport report =
          new SmtpDelivery(line, THREE_ROUNDS, CLOCK, InEnglish.TEXTS, slept::add)
              .deliver(three(), ledger, (o, d, a) -> {});

      assertTrue(stopped(report).contains("certificate"), report::toString);
      assertEquals(0, server.timesOf("AUTH") + server.timesOf("MAIL"));
    }
  }

  @Test
  void the_checks_are_off_only_where_the_command_line_says_so() {
    LoopbackCertificate other = LoopbackCertificate.of("mail.example", folder);
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(other, Script.NONE)) {
      SmtpServer lax = server(server, Protection.ANY_CERTIFICATE, Duration.ofSeconds(5));
      SmtpLine line = new SmtpLine(lax, Optional.empty());
      DeliveryReport report =
          new SmtpDelivery(line, THREE_ROUNDS, CLOCK, InEnglish.TEXTS, slept::add)
              .deliver(three(), ledger, (o, d, a) -> {});

      assertTrue(report.isComplete(), report::toString);
      assertTrue(server.taken().stream().allMatch(LoopbackSmtpServer.Taken::overTls));
    }
    try (LoopbackSmtpServer server = LoopbackSmtpServer.plain(Script.NONE)) {
      SmtpServer bare = server(server, Protection.NONE, Duration.ofSeconds(5));
      List<QueuedMail> other2 = List.of(queued(SampleMail.to("Cleo", "cleo@stable.example")));

      assertTrue(deliver(bare, other2).isComplete());
    }
  }

  @Test
  void a_wrong_password_stops_the_run_and_is_not_shown() {
    Script echoing =
        Script.at("AUTH", 0, Act.say("535 not " + LoopbackSmtpServer.PASSWORD + ", try harder"));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, echoing)) {
      DeliveryReport report = deliver(server, three());

      assertTrue(stopped(report).contains("does not accept the user and password"));
      assertEquals(1, server.timesOf("AUTH"), "no second guess, lest the account be locked");
      assertFalse(report.toString().contains(LoopbackSmtpServer.PASSWORD));
      assertFalse(ledger.entries().toString().contains(LoopbackSmtpServer.PASSWORD));
    }
  }

  @Test
  void a_server_that_repeats_the_password_is_not_quoted() {
    Script echoing = Script.at("RCPT", 0, Act.say("550 " + LoopbackSmtpServer.PASSWORD));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, echoing)) {
      DeliveryReport report = deliver(server, three());

      assertEquals(Message.literal("550 …"), report.outcomes().get(0).detail());
      assertFalse(ledger.entries().toString().contains(LoopbackSmtpServer.PASSWORD));
    }
  }

  /**
   * The server writes UTF-8 and the mail library reads Latin-1, so the letters come back as others.
   */
  @ParameterizedTest
  @ValueSource(strings = {"hufschlägel-Über-7", "Пароль-7", "kovář-7", "e\u0301peron-7"})
  void a_password_outside_ascii_is_not_quoted_either(String password) {
    SmtpCredential credential = new SmtpCredential("localhost", "office@alder.example", password);
    byte[] bytes = ("\0office@alder.example\0" + password).getBytes(StandardCharsets.UTF_8);
    String plain = Base64.getEncoder().encodeToString(bytes);
    for (String echoed : List.of(password, plain, Normalizer.normalize(password, Form.NFC))) {
      Script echoing =
          (step, time, line) ->
              switch (step) {
                case "AUTH" -> Optional.of(Act.say("235 welcome"));
                case "RCPT" -> Optional.of(Act.say("550 " + echoed));
                default -> Optional.empty();
              };
      try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, echoing)) {
        SmtpServer known =
            new SmtpServer(
                "localhost",
                server.port(),
                false,
                Optional.of(credential),
                Protection.CHECKED,
                Duration.ofSeconds(5));
        assertEquals(Message.literal("550 …"), deliver(known, three()).outcomes().get(0).detail());
      }
    }
  }

  @Test
  void the_machine_and_its_user_are_not_named() {
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, Script.NONE)) {
      deliver(server, three());

      assertTrue(server.heard().contains("EHLO [127.0.0.1]"), server.heard()::toString);
    }
  }

  @Test
  void a_host_or_port_that_is_none_is_said() {
    Map.of("mail example", 587, "mail.example", 65_536)
        .forEach(
            (host, port) -> {
              UnusableServer none =
                  assertThrows(
                      UnusableServer.class,
                      () -> SmtpServer.of(host, port, Optional.empty(), Protection.CHECKED));
              String said = InEnglish.said(none.message());
              assertEquals(port > 587 ? "not a port: 65536" : "not a host name", said);
            });
  }

  @Test
  void a_credential_is_for_its_own_host_alone() {
    assertThrows(
        IllegalArgumentException.class,
        () -> SmtpServer.of("mail.evil.example", 587, Optional.of(CREDENTIAL), Protection.CHECKED));
    assertFalse(CREDENTIAL.toString().contains(LoopbackSmtpServer.PASSWORD));
  }
}

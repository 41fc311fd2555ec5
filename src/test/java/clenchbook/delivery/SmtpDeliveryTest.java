package clenchbook.delivery;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.mails.MailId;
import clenchbook.billing.mails.MailLedger;
import clenchbook.billing.mails.MailState;
import clenchbook.delivery.DeliveryOutcome.Result;
import clenchbook.delivery.LoopbackSmtpServer.Act;
import clenchbook.delivery.LoopbackSmtpServer.Script;
import clenchbook.delivery.SmtpServer.Protection;
import clenchbook.delivery.message.MailMessage;
import clenchbook.delivery.message.OutgoingMail;
import clenchbook.register.MailRegister;
import clenchbook.texts.InEnglish;
import clenchbook.texts.Message;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Delivery over real sockets to a server that refuses, falls silent and drops the line on demand.
 */
class SmtpDeliveryTest extends LoopbackDelivery {
  @Test
  void each_owner_gets_one_mail_over_one_protected_line() {
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, Script.NONE)) {
      DeliveryReport report = deliver(server, three());

      assertTrue(report.isComplete(), report::toString);
      assertEquals(3, server.taken().size());
      assertEquals(1, server.timesOf("GREETING"));
      assertTrue(server.taken().stream().allMatch(LoopbackSmtpServer.Taken::overTls));
      assertEquals(1, server.timesOf("AUTH"));
      assertEquals(
          List.of(Duration.ofSeconds(1), Duration.ofSeconds(1), Duration.ofSeconds(1)), slept);
      assertEquals(List.of("DELIVERED 1/3", "DELIVERED 2/3", "DELIVERED 3/3"), progress);
    }
  }

  @Test
  void what_arrives_is_the_message_byte_for_byte() {
    OutgoingMail mail = SampleMail.withParagraphs(".", "..dots at the start", "ä".repeat(200));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, Script.NONE)) {
      deliver(server, List.of(queued(mail)));

      assertArrayEquals(
          MailMessage.of(mail).deliveryBytes(OffsetDateTime.now(CLOCK)),
          server.taken().get(0).bytes());
    }
  }

  @Test
  void a_second_run_sends_nothing_again() {
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, Script.NONE)) {
      deliver(server, three());
      DeliveryReport second = secondRun(server, three());

      assertEquals(3, second.count(Result.DELIVERED_BEFORE));
      assertEquals(3, server.taken().size());
    }
  }

  @Test
  void what_went_off_under_an_earlier_name_of_the_owner_does_not_go_again() {
    OutgoingMail mail = SampleMail.to("Anna", "anna@stable.example");
    MailId then = new MailId("Anna", "2026-10", "2026-0007");
    MailId now = new MailId("Anna Bell", "2026-10", "2026-0007");
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, Script.NONE)) {
      deliver(server, List.of(new QueuedMail(then, mail, false)));
      DeliveryReport second =
          secondRun(server, List.of(new QueuedMail(now, mail, false, List.of("An", "Anna"))));

      assertEquals(1, second.count(Result.DELIVERED_BEFORE), second::toString);
      assertEquals(1, server.taken().size());
    }
  }

  @Test
  void an_owner_refused_for_good_is_reported_and_the_others_get_theirs() {
    Script script = Script.at("RCPT", 2, Act.say("550 5.1.1 no such mailbox"));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      DeliveryReport report = deliver(server, three());

      assertEquals(2, server.taken().size());
      DeliveryOutcome refused = report.outcomes().get(1);
      assertEquals(Result.REFUSED, refused.result());
      assertEquals(Message.literal("550 5.1.1 no such mailbox"), refused.detail());
      assertEquals(Optional.of(MailState.REFUSED), ledger.find(refused.id()));
      assertEquals(1, server.timesOf("GREETING"), "one line serves all");
    }
  }

  @ParameterizedTest
  @CsvSource({"MAIL, 552 too big", "DATA, 554 no", "DOT, 554 5.7.1 looks like spam"})
  void a_refusal_at_any_step_leaves_the_line_usable(String step, String reply) {
    Script script = Script.at(step, 1, Act.say(reply));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      DeliveryReport report = deliver(server, three());

      assertEquals(1, report.count(Result.REFUSED));
      assertTrue(
          InEnglish.said(report.outcomes().get(0).detail()).startsWith(reply), report::toString);
      assertEquals(2, report.count(Result.DELIVERED));
    }
  }

  @Test
  void a_refusal_at_the_end_is_known_even_where_the_server_hangs_up_after_it() {
    Script script = Script.at("DOT", 1, Act.sayAndCut("554 5.7.1 looks like spam"));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      DeliveryReport report = deliver(server, three());

      assertEquals(Result.REFUSED, report.outcomes().get(0).result());
      assertEquals(2, report.count(Result.DELIVERED));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"MAIL", "RCPT", "DATA", "DOT"})
  void a_passing_refusal_is_tried_again_after_the_others_with_growing_waits(String step) {
    Script script =
        (now, time, line) ->
            now.equals(step) && (time == 1 || time == 4)
                ? Optional.of(Act.say("451 4.7.1 come back later"))
                : Optional.empty();
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      DeliveryReport report = deliver(server, three());

      assertTrue(report.isComplete(), report::toString);
      assertEquals(3, server.taken().size());
      assertEquals("anna@stable.example", server.taken().get(2).to());
      assertTrue(slept.containsAll(THREE_ROUNDS.backOff()), slept::toString);
    }
  }

  @Test
  void a_refusal_that_does_not_pass_leaves_the_mail_for_the_next_run() {
    Script script = Script.at("RCPT", 0, Act.say("450 4.2.1 mailbox busy"));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      DeliveryReport report = deliver(server, three());

      assertEquals(3, report.count(Result.PUT_OFF));
      assertEquals(9, server.timesOf("RCPT"));
      assertEquals(Optional.of(MailState.INTENDED), ledger.find(report.outcomes().get(0).id()));
    }
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, Script.NONE)) {
      assertTrue(secondRun(server, three()).isComplete());
      assertEquals(3, server.taken().size());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"EHLO", "STARTTLS", "AUTH", "MAIL", "RCPT", "DATA"})
  void a_line_lost_before_the_handing_over_is_safe_to_repeat(String step) {
    Script script = Script.at(step, 1, Act.hangUp());
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      DeliveryReport report = deliver(server, three());

      assertTrue(report.isComplete(), report::toString);
      assertEquals(3, server.taken().size());
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void a_line_lost_after_the_handing_over_is_unsure_and_never_repeated(boolean serverTookIt) {
    Script script = Script.at("DOT", 2, serverTookIt ? Act.takeAndCut() : Act.hangUp());
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      DeliveryReport report = deliver(server, three());
      DeliveryOutcome unsure = report.outcomes().get(1);

      assertEquals(Result.UNSURE, unsure.result(), report::toString);
      assertEquals(2, report.count(Result.DELIVERED));
      assertEquals(Optional.of(MailState.UNSURE), ledger.find(unsure.id()));

      DeliveryReport second = secondRun(server, three());
      assertEquals(Result.UNSURE, second.outcomes().get(1).result());
      assertEquals(serverTookIt ? 1 : 0, server.takenFor("ben@stable.example"));
    }
  }

  @Test
  void an_unsure_mail_goes_again_where_the_farrier_says_so() {
    Script script = Script.at("DOT", 2, Act.hangUp());
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      deliver(server, three());
      List<QueuedMail> again =
          three().stream()
              .map(m -> new QueuedMail(m.id(), m.mail(), m.id().owner().equals("Ben")))
              .toList();

      DeliveryReport second = secondRun(server, again);

      assertTrue(second.isComplete(), second::toString);
      assertEquals(1, server.takenFor("ben@stable.example"));
      assertEquals(1, server.takenFor("anna@stable.example"));
    }
  }

  @Test
  void a_server_that_falls_silent_after_the_end_leaves_the_mail_unsure() {
    Script script = Script.at("DOT", 1, Act.takeAndFallSilent(Duration.ofSeconds(3)));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      SmtpServer impatient = server(server, Protection.CHECKED, Duration.ofMillis(700));
      DeliveryReport report = deliver(impatient, three());

      assertEquals(Result.UNSURE, report.outcomes().get(0).result(), report::toString);
      assertEquals(2, report.count(Result.DELIVERED));
    }
  }

  @Test
  void two_losses_in_a_row_stop_the_run() {
    Script script = Script.at("DOT", 0, Act.takeAndCut());
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      DeliveryReport report = deliver(server, three());

      assertEquals(2, report.count(Result.UNSURE));
      assertEquals(1, report.count(Result.PUT_OFF));
      assertEquals(
          "the mail server twice lost the line with a mail just handed over", stopped(report));
    }
  }

  @Test
  void the_register_keeps_why_in_english() {
    Script script = Script.at("DOT", 0, Act.takeAndCut());
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      DeliveryReport report = deliver(server, three());

      assertEquals("delivery.noAnswer", report.outcomes().get(0).detail().key());
      assertTrue(
          ledger.entries().get(0).reason().startsWith("handed over, then no answer: "),
          () -> ledger.entries().toString());
    }
  }

  @Test
  void a_mail_that_a_killed_run_had_handed_over_is_unsure() {
    List<QueuedMail> mails = three();
    ledger.intend(mails.get(0).id(), false);
    ledger.handedOver(mails.get(0).id());
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, Script.NONE)) {
      DeliveryReport report = secondRun(server, mails);

      assertEquals(Result.UNSURE, report.outcomes().get(0).result());
      assertEquals(0, server.takenFor("anna@stable.example"));
      assertEquals(Optional.of(MailState.UNSURE), ledger.find(mails.get(0).id()));
    }
  }

  @Test
  void of_two_runs_at_once_only_one_hands_a_mail_over() {
    List<QueuedMail> mails = three();
    MailRegister other = register.mails("other run");
    Script meddling =
        (step, time, line) -> {
          if (step.equals("DATA") && time == 1) {
            other.intend(mails.get(0).id(), false);
          }
          return Optional.empty();
        };
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, meddling)) {
      assertThrows(IllegalStateException.class, () -> deliver(server, mails));

      assertEquals(List.of(), server.taken());
    }
  }

  @Test
  void a_step_that_cannot_be_written_keeps_the_mail_here() {
    MailLedger full =
        new MailLedgerInMemory() {
          @Override
          public void handedOver(MailId id) {
            throw new IllegalStateException("disk full");
          }
        };
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, Script.NONE)) {
      SmtpDelivery delivery = delivery(server(server, Protection.CHECKED, Duration.ofSeconds(5)));

      assertThrows(
          IllegalStateException.class, () -> delivery.deliver(three(), full, (o, d, a) -> {}));
      assertEquals(List.of(), server.taken());
    }
  }

  @Test
  void a_server_that_is_not_there_is_tried_and_then_said() {
    LoopbackSmtpServer gone = LoopbackSmtpServer.plain(Script.NONE);
    gone.close();

    DeliveryReport report = deliver(gone, three());

    assertTrue(stopped(report).contains("cannot be reached"), report::toString);
    assertEquals(3, report.count(Result.PUT_OFF));
    assertTrue(slept.containsAll(THREE_ROUNDS.backOff()), slept::toString);
  }

  @Test
  void a_server_that_closes_for_a_while_is_called_again() {
    Script script = Script.at("MAIL", 2, Act.sayAndCut("421 4.3.2 too many for one line"));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      DeliveryReport report = deliver(server, three());

      assertTrue(report.isComplete(), report::toString);
      assertEquals(3, server.taken().size());
    }
  }

  @Test
  void a_server_that_turns_everybody_away_is_quoted_and_not_waited_for() {
    Script script = Script.at("GREETING", 0, Act.sayAndCut("554 5.3.2 no mail service here"));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      DeliveryReport report = deliver(server, three());

      String said = "localhost:" + server.port() + " takes no mail: 554 5.3.2 no mail service here";
      assertEquals(said, stopped(report));
      assertEquals(1, server.timesOf("GREETING"));
      assertEquals(List.of(), slept);
      assertEquals(3, report.count(Result.PUT_OFF));
    }
  }

  @Test
  void a_server_that_begins_no_tls_just_now_is_quoted_and_not_waited_for() {
    Script script = Script.at("STARTTLS", 0, Act.say("454 4.7.0 TLS zurzeit nicht verfügbar"));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      DeliveryReport report = deliver(server, three());

      assertTrue(
          stopped(report).endsWith(": 454 4.7.0 TLS zurzeit nicht verfügbar"), report::toString);
      assertEquals(1, server.timesOf("GREETING"));
      assertEquals(0, server.timesOf("AUTH") + server.timesOf("MAIL"));
      assertEquals(List.of(), slept);
    }
  }

  @Test
  void a_server_that_is_busy_when_called_is_called_again_and_then_quoted() {
    Script script = Script.at("GREETING", 0, Act.sayAndCut("421 4.3.2 come back later"));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      DeliveryReport report = deliver(server, three());

      assertTrue(
          stopped(report).endsWith("takes no mail: 421 4.3.2 come back later"), report::toString);
      assertEquals(THREE_ROUNDS.backOff(), slept);
    }
  }

  @Test
  void a_couple_gets_one_message_or_none() {
    List<QueuedMail> mails = List.of(queued(SampleMail.to("Anna", "a@x.example; b@x.example")));
    Script script = Script.at("RCPT", 2, Act.say("550 5.1.1 no such mailbox"));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      assertEquals(Result.REFUSED, deliver(server, mails).outcomes().get(0).result());
      assertEquals(List.of(), server.taken());

      assertTrue(secondRun(server, mails).isComplete());
      assertEquals(1, server.taken().size());
      assertEquals(4, server.timesOf("RCPT"));
    }
  }

  @Test
  void an_address_outside_ascii_needs_a_server_that_takes_it() {
    List<QueuedMail> mails = List.of(queued(SampleMail.to("Jörg", "jörg@stall.example")));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, Script.NONE)) {
      DeliveryReport report = deliver(server, mails);

      assertEquals(Result.REFUSED, report.outcomes().get(0).result(), report::toString);
    }
    Script international =
        Script.at(
            "EHLO", 0, Act.say("250-loopback\r\n250-AUTH PLAIN\r\n250-STARTTLS\r\n250 SMTPUTF8"));
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, international)) {
      assertTrue(secondRun(server, mails).isComplete());
      assertEquals("jörg@stall.example", server.taken().get(0).to());
      assertTrue(server.heard().contains("MAIL FROM:<office@alder.example> SMTPUTF8"));
    }
  }
}

package clenchbook.delivery.message;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.delivery.SampleMail;
import clenchbook.delivery.SecondParser;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.james.mime4j.dom.Entity;
import org.apache.james.mime4j.dom.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Messages read back by Apache James Mime4j in its strict mode. Sources: RFC 5322 (2008) sections
 * 2.1.1, 3.6; RFC 2045 (1996) section 6; RFC 2047 (1996); RFC 2231 (1997) section 4; RFC 6532
 * (2012). Section numbers from memory.
 */
class MailMessageTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Invoice 2026-0007 from Alder Farriery",
        "Rechnung für Frau Łukasiewicz – Hufbeschlag",
        "請求書 十月",
        "Facture n° 12 : 1 250,00 €",
        "=?utf-8?q?not_an_encoded_word?=",
        "A subject so long that it has to be folded over several lines of the header, because no"
            + " line of a message may be longer than 998 characters and none should be longer than"
            + " 78, Größenordnungen hin oder her",
        "🐴 October"
      })
  void a_subject_reads_back_as_it_was_written(String subject) {
    Message read = SecondParser.read(bytes(SampleMail.withSubject(subject)));

    assertEquals(subject, read.getSubject());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-0007 Rosa Lindqvist.pdf",
        "€ rates.pdf",
        "2026-0008 Łukasz Żółć.pdf",
        "naïve; name=\"x\".pdf",
        "十月 請求書.pdf",
        "2026-0009 a very long owner's name that goes on and on until it needs more than one"
            + " continuation of the parameter, ä ö ü.pdf"
      })
  void a_file_name_reads_back_as_it_was_written(String fileName) {
    List<Entity> parts =
        SecondParser.leaves(SecondParser.read(bytes(SampleMail.withFile(fileName))));

    assertEquals(fileName, parts.get(2).getFilename());
    assertEquals("attachment", parts.get(2).getDispositionType());
  }

  @Test
  void a_file_name_outside_ascii_is_written_in_extended_notation() {
    String message = text(SampleMail.withFile("€ rates.pdf"));

    // RFC 6266 (2011), section 5, gives this encoding of the name; from memory.
    assertTrue(message.contains("filename*=UTF-8''%E2%82%AC%20rates.pdf"), message);
  }

  @Test
  void attachments_read_back_byte_for_byte() {
    Attachment invoice = SampleMail.pdf("2026-0007.pdf");
    Attachment statement = Attachment.pdf("statement.pdf", new byte[] {0, 13, 10, 46, 13, 10, -1});
    OutgoingMail mail = SampleMail.mail("Rosa", "rosa@stable.example", "x", invoice, statement);

    List<Entity> parts = SecondParser.leaves(SecondParser.read(bytes(mail)));

    assertEquals(4, parts.size());
    assertArrayEquals(invoice.bytes(), SecondParser.bytes(parts.get(2)));
    assertArrayEquals(statement.bytes(), SecondParser.bytes(parts.get(3)));
    assertEquals("application/pdf", parts.get(3).getMimeType());
  }

  @Test
  void both_renderings_say_the_same_and_html_is_escaped() {
    OutgoingMail mail = SampleMail.withParagraphs("Liebe Frau <b>Öz</b> & Co,", "Zeile 1\nZeile 2");

    List<Entity> parts = SecondParser.leaves(SecondParser.read(bytes(mail)));

    assertEquals("text/plain", parts.get(0).getMimeType());
    assertEquals("text/html", parts.get(1).getMimeType());
    assertEquals(
        "Liebe Frau <b>Öz</b> & Co,\r\n\r\nZeile 1\r\nZeile 2\r\n",
        SecondParser.text(parts.get(0)));
    String html = SecondParser.text(parts.get(1));
    assertTrue(html.contains("<p>Liebe Frau &lt;b&gt;Öz&lt;/b&gt; &amp; Co,</p>"), html);
    assertTrue(html.contains("<p>Zeile 1<br>\r\nZeile 2</p>"), html);
  }

  @Test
  void only_an_https_address_becomes_a_link() {
    String html =
        new MailText("en", "x", List.of("https://pay.example/a?b=1&c=2", "javascript:alert(1)"))
            .html();

    assertTrue(
        html.contains(
            "<a href=\"https://pay.example/a?b=1&amp;c=2\">https://pay.example/a?b=1&amp;c=2</a>"),
        html);
    assertFalse(html.contains("href=\"javascript"), html);
  }

  @Test
  void the_headers_a_message_must_have_are_there_once() {
    Message read = SecondParser.read(bytes(SampleMail.to("Rosa", "rosa@stable.example")));

    for (String name : List.of("Date", "From", "To", "Subject", "Message-ID", "MIME-Version")) {
      assertEquals(1, read.getHeader().getFields(name).size(), name);
    }
    assertEquals("office@alder.example", read.getFrom().get(0).getAddress());
    assertEquals("Alder Farriery", read.getFrom().get(0).getName());
    assertTrue(read.getMessageId().matches("<[0-9a-f]{40}@alder\\.example>"), read.getMessageId());
  }

  @Test
  void the_outbox_file_bears_the_day_of_the_documents_and_asks_to_be_sent() {
    Message read = SecondParser.read(bytes(SampleMail.to("Rosa", "rosa@stable.example")));

    assertEquals("Sat, 31 Oct 2026 12:00:00 +0000", read.getHeader().getField("Date").getBody());
    assertEquals("1", read.getHeader().getField("X-Unsent").getBody());
  }

  @Test
  void what_goes_to_the_server_bears_the_moment_of_sending_and_the_same_id() {
    MailMessage message = MailMessage.of(SampleMail.to("Rosa", "rosa@stable.example"));
    OffsetDateTime sent = OffsetDateTime.of(2026, 11, 2, 18, 5, 9, 0, ZoneOffset.ofHours(1));

    Message read = SecondParser.read(message.deliveryBytes(sent));

    assertEquals("Mon, 2 Nov 2026 18:05:09 +0100", read.getHeader().getField("Date").getBody());
    assertEquals(message.messageId(), read.getMessageId());
    assertEquals(0, read.getHeader().getFields("X-Unsent").size());
  }

  @Test
  void the_same_mail_gives_the_same_bytes_in_any_locale_and_zone() {
    byte[] first = bytes(SampleMail.withSubject("Größe"));
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(new Locale("tr", "TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      assertArrayEquals(first, bytes(SampleMail.withSubject("Größe")));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void another_content_gives_another_message_id() {
    MailMessage one = MailMessage.of(SampleMail.withSubject("a"));
    MailMessage other = MailMessage.of(SampleMail.withSubject("b"));

    assertNotEquals(one.messageId(), other.messageId());
  }

  @Test
  void lines_end_with_both_characters_and_none_is_too_long() {
    String message = text(SampleMail.withParagraphs("ä".repeat(3000), "x".repeat(3000), ".", ".."));

    assertFalse(message.replace("\r\n", "").contains("\n"));
    assertFalse(message.replace("\r\n", "").contains("\r"));
    assertTrue(message.endsWith("\r\n"));
    assertTrue(message.lines().allMatch(line -> line.length() <= 998));
    assertTrue(message.chars().allMatch(letter -> letter < 128), "all of it is ASCII");
  }

  @Test
  void an_address_outside_ascii_stands_as_utf8() {
    byte[] message = bytes(SampleMail.to("Jörg", "jörg@stall.example"));

    String headers = new String(message, StandardCharsets.UTF_8);
    assertTrue(headers.contains("<jörg@stall.example>\r\n"), headers);
    assertEquals(
        "jörg@stall.example", SecondParser.read(message).getTo().flatten().get(0).getAddress());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Łukasz Żółć", "O'Neill, \"Nell\" (Mrs)", "山田 花子", "Eve <eve@evil.example>"})
  void an_owners_name_reads_back_and_names_nobody_else(String owner) {
    Message read = SecondParser.read(bytes(SampleMail.to(owner, "rosa@stable.example")));

    assertEquals(1, read.getTo().flatten().size());
    assertEquals("rosa@stable.example", read.getTo().flatten().get(0).getAddress());
    assertEquals(owner, read.getTo().flatten().get(0).getName());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"a\r\nBcc: thief@evil.example", "a\nb", "a\rb", "a\u0000b", "a\u202Efdp.exe"})
  void nothing_with_a_line_break_or_a_direction_mark_reaches_a_header(String evil) {
    assertThrows(IllegalArgumentException.class, () -> SampleMail.withSubject(evil));
    assertThrows(IllegalArgumentException.class, () -> SampleMail.withFile(evil));
    OutgoingMail good = SampleMail.withSubject("x");
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new OutgoingMail(
                "o", good.to(), good.from(), evil, good.text(), good.date(), List.of()));
  }

  @Test
  void a_cleaned_name_can_write_no_header() {
    String subject = HeaderText.clean("Invoice for Eve\r\nBcc: thief@evil.example\u202E");

    Message read = SecondParser.read(bytes(SampleMail.withSubject(subject)));

    assertEquals("Invoice for Eve Bcc: thief@evil.example", read.getSubject());
    assertEquals(0, read.getHeader().getFields("Bcc").size());
  }

  @Test
  void an_attachment_is_no_path() {
    for (String name : List.of("../x.pdf", "a\\b.pdf", " ")) {
      assertThrows(IllegalArgumentException.class, () -> SampleMail.withFile(name), name);
    }
  }

  private static byte[] bytes(OutgoingMail mail) {
    return MailMessage.of(mail).outboxBytes();
  }

  private static String text(OutgoingMail mail) {
    return new String(bytes(mail), StandardCharsets.UTF_8);
  }
}

package clenchbook.delivery;

import clenchbook.delivery.message.Attachment;
import clenchbook.delivery.message.HeaderText;
import clenchbook.delivery.message.MailAddress;
import clenchbook.delivery.message.MailText;
import clenchbook.delivery.message.OutgoingMail;
import clenchbook.delivery.wording.MailWord;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Invented mails for the tests of this package. */
public final class SampleMail {
  static final LocalDate MONTH_END = LocalDate.of(2026, 10, 31);

  private SampleMail() {}

  static MailAddress address(String text) {
    return MailAddress.parse(text).orElseThrow();
  }

  public static OutgoingMail to(String owner, String address) {
    return mail(owner, address, "Invoice 2026-0007 from Alder Farriery", pdf("2026-0007.pdf"));
  }

  public static OutgoingMail withSubject(String subject) {
    return mail("Rosa Lindqvist", "rosa@stable.example", subject, pdf("2026-0007.pdf"));
  }

  public static OutgoingMail withFile(String fileName) {
    return mail("Rosa Lindqvist", "rosa@stable.example", "Invoice", pdf(fileName));
  }

  public static OutgoingMail withParagraphs(String... paragraphs) {
    MailText text = new MailText("en", "Invoice", Arrays.asList(paragraphs));
    return new OutgoingMail(
        "Rosa Lindqvist",
        List.of(address("rosa@stable.example")),
        address("office@alder.example"),
        "Alder Farriery",
        text,
        MONTH_END,
        List.of());
  }

  public static OutgoingMail mail(
      String owner, String to, String subject, Attachment... attachments) {
    return new OutgoingMail(
        owner,
        MailAddress.parseAll(to),
        address("office@alder.example"),
        "Alder Farriery",
        new MailText("en", subject, List.of("Dear " + HeaderText.clean(owner) + ",", "Regards")),
        MONTH_END,
        List.of(attachments));
  }

  public static Attachment pdf(String name) {
    byte[] bytes = new byte[5000];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = (byte) (i * 31 + i / 256);
    }
    byte[] head = "%PDF-1.7\n".getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(head, 0, bytes, 0, head.length);
    return Attachment.pdf(name, bytes);
  }

  public static Map<MailWord, String> everyValue() {
    Map<MailWord, String> values = new EnumMap<>(MailWord.class);
    for (MailWord word : MailWord.values()) {
      values.put(word, "<" + word.placeholder() + ">");
    }
    return values;
  }
}

package clenchbook.delivery.message;

import jakarta.activation.DataHandler;
import jakarta.mail.Message.RecipientType;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.internet.MimeUtility;
import jakarta.mail.util.ByteArrayDataSource;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Properties;

/**
 * A mail as the bytes of an Internet message (RFC 5322, MIME by RFC 2045 to 2049).
 *
 * <p>The same mail gives the same bytes: the boundaries and the Message-ID come from a digest of
 * what it says and holds, and in the outbox the date is the documents' own. Names outside ASCII are
 * encoded by RFC 2047, file names by RFC 2231, an address outside ASCII stands as UTF-8 (RFC 6532).
 * Lines end with CR LF and hold at most 998 characters.
 */
public final class MailMessage {
  private static final DateTimeFormatter MAIL_DATE =
      DateTimeFormatter.ofPattern("EEE, d MMM yyyy HH:mm:ss Z", Locale.ROOT);

  /** Noon, so that the day is the same day in nearly every zone. */
  private static final int HOUR_OF_DAY = 12;

  private static final int DIGEST_LETTERS = 40;

  /** Ten characters of four bytes each stay below the 75 of an encoded word (RFC 2047, 2). */
  private static final int WORD = 10;

  private final OutgoingMail mail;
  private final String digest;

  private MailMessage(OutgoingMail mail) {
    this.mail = mail;
    this.digest = digestOf(mail);
  }

  /** The message of the mail; nothing is rendered yet. */
  public static MailMessage of(OutgoingMail mail) {
    return new MailMessage(mail);
  }

  /** The mail this is the message of. */
  public OutgoingMail mail() {
    return mail;
  }

  /** The Message-ID with its angle brackets; the same for the same content. */
  public String messageId() {
    return '<' + digest + '@' + mail.from().domain() + '>';
  }

  /**
   * The bytes of the {@code .eml} file: dated as the documents are, and marked as not yet sent so
   * that mail programs which know the mark open it ready to send.
   */
  public byte[] outboxBytes() {
    OffsetDateTime noon = mail.date().atTime(HOUR_OF_DAY, 0).atOffset(ZoneOffset.UTC);
    return render(noon, true);
  }

  /**
   * The bytes that go to the mail server.
   *
   * @param sent when it is sent, to the second; the message bears it as its date
   */
  public byte[] deliveryBytes(OffsetDateTime sent) {
    return render(sent, false);
  }

  private byte[] render(OffsetDateTime date, boolean unsent) {
    try {
      MimeMessage message = new FixedMessage(session(), messageId());
      writeHeaders(message, date, unsent);
      message.setContent(content());
      message.saveChanges();
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      message.writeTo(bytes);
      return bytes.toByteArray();
    } catch (MessagingException impossible) {
      throw new IllegalStateException("a checked mail did not render", impossible);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private Session session() {
    Properties properties = new Properties();
    properties.setProperty("mail.mime.allowutf8", Boolean.toString(mail.needsUtf8()));
    return Session.getInstance(properties);
  }

  private void writeHeaders(MimeMessage message, OffsetDateTime date, boolean unsent)
      throws MessagingException, IOException {
    message.setHeader("Date", MAIL_DATE.format(date));
    message.setFrom(address(mail.from(), mail.fromName()));
    message.setRecipients(RecipientType.TO, recipients());
    message.setHeader("Subject", MimeUtility.fold("Subject: ".length(), encoded(subject())));
    message.setHeader("Content-Language", mail.text().language());
    if (unsent) {
      message.setHeader("X-Unsent", "1");
    }
  }

  /** The owner's name stands beside the address where there is one address. */
  private InternetAddress[] recipients() throws IOException {
    String name = mail.to().size() == 1 ? HeaderText.clean(mail.owner()) : "";
    InternetAddress[] recipients = new InternetAddress[mail.to().size()];
    for (int i = 0; i < recipients.length; i++) {
      recipients[i] = address(mail.to().get(i), name);
    }
    return recipients;
  }

  private String subject() {
    return mail.text().subject();
  }

  /**
   * The text by RFC 2047. One that is plain ASCII but reads as if it were encoded already is
   * encoded once more, so that a name shows as it was written.
   */
  private static String encoded(String text) throws UnsupportedEncodingException {
    if (!text.contains("=?")) {
      return MimeUtility.encodeText(text, StandardCharsets.UTF_8.name(), null);
    }
    StringBuilder words = new StringBuilder();
    int start = 0;
    while (start < text.length()) {
      int end =
          text.offsetByCodePoints(start, Math.min(WORD, text.codePointCount(start, text.length())));
      words.append(start == 0 ? "" : " ").append(encodedWord(text.substring(start, end)));
      start = end;
    }
    return words.toString();
  }

  private static String encodedWord(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return "=?UTF-8?B?" + Base64.getEncoder().encodeToString(bytes) + "?=";
  }

  private static InternetAddress address(MailAddress address, String name) throws IOException {
    InternetAddress written = new InternetAddress();
    written.setAddress(address.text());
    if (!name.isEmpty()) {
      // Some readers decode what looks encoded even inside quotation marks.
      written.setPersonal(name.replace("=?", "= ?"), StandardCharsets.UTF_8.name());
    }
    return written;
  }

  private MimeMultipart content() throws MessagingException {
    MimeMultipart alternative = new FixedMultipart("alternative", boundary('a'));
    alternative.addBodyPart(textPart(mail.text().plain(), "plain"));
    alternative.addBodyPart(textPart(mail.text().html(), "html"));
    MimeBodyPart words = new MimeBodyPart();
    words.setContent(alternative);
    MimeMultipart mixed = new FixedMultipart("mixed", boundary('m'));
    mixed.addBodyPart(words);
    for (Attachment attachment : mail.attachments()) {
      mixed.addBodyPart(filePart(attachment));
    }
    return mixed;
  }

  private static MimeBodyPart textPart(String text, String subtype) throws MessagingException {
    MimeBodyPart part = new MimeBodyPart();
    part.setText(text, StandardCharsets.UTF_8.name(), subtype);
    part.setHeader("Content-Transfer-Encoding", "quoted-printable");
    return part;
  }

  private static MimeBodyPart filePart(Attachment attachment) throws MessagingException {
    MimeBodyPart part = new MimeBodyPart();
    part.setDataHandler(
        new DataHandler(new ByteArrayDataSource(attachment.bytes(), attachment.mediaType())));
    part.setHeader("Content-Transfer-Encoding", "base64");
    part.setDisposition("attachment");
    part.setFileName(attachment.fileName());
    return part;
  }

  /** An equals sign before an underscore occurs in neither transfer encoding (RFC 2045, 6.7). */
  private String boundary(char level) {
    return "=_" + level + digest;
  }

  private static String digestOf(OutgoingMail mail) {
    MessageDigest digest = sha256();
    add(digest, mail.owner());
    mail.to().forEach(to -> add(digest, to.text()));
    add(digest, mail.from().text());
    add(digest, mail.fromName());
    add(digest, mail.date().toString());
    add(digest, mail.text().language());
    add(digest, mail.text().subject());
    mail.text().paragraphs().forEach(paragraph -> add(digest, paragraph));
    for (Attachment attachment : mail.attachments()) {
      add(digest, attachment.fileName());
      add(digest, HexFormat.of().formatHex(sha256().digest(attachment.bytes())));
    }
    return HexFormat.of().formatHex(digest.digest()).substring(0, DIGEST_LETTERS);
  }

  /** Each text with its length before it, so that no two mails run together to the same bytes. */
  private static void add(MessageDigest digest, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    digest.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
    digest.update(bytes);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }

  /** Keeps its Message-ID, which would otherwise hold the clock and the user's name. */
  private static final class FixedMessage extends MimeMessage {
    private final String id;

    FixedMessage(Session session, String id) {
      super(session);
      this.id = id;
    }

    @Override
    protected void updateMessageID() throws MessagingException {
      setHeader("Message-ID", id);
    }
  }

  /** Keeps its boundary, which would otherwise hold the clock. */
  private static final class FixedMultipart extends MimeMultipart {
    FixedMultipart(String subtype, String boundary) {
      super(subtype);
      contentType = "multipart/" + subtype + ";\r\n\tboundary=\"" + boundary + '"';
    }
  }
}

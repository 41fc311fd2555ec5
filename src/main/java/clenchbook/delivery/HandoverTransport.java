package clenchbook.delivery;

import clenchbook.delivery.message.HeaderText;
import clenchbook.delivery.message.MailAddress;
import clenchbook.delivery.message.OutgoingMail;
import clenchbook.texts.Message;
import jakarta.mail.Address;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.URLName;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.eclipse.angus.mail.smtp.SMTPSendFailedException;
import org.eclipse.angus.mail.smtp.SMTPTransport;
import org.jspecify.annotations.Nullable;

/**
 * One connection to a mail server that shows the moment a message changes hands.
 *
 * <p>A server has a message only once it has read the line with the single dot that ends it (RFC
 * 5321, section 4.1.1.4). Everything before that dot is safe to repeat; from the dot on, only the
 * server's answer tells. So the step to write down is taken when the message has been written out
 * and the dot has not. The commands whose answers decide a mail's fate are spoken here and not by
 * the library, which asks for a reset before it reports a refusal and loses the refusal when the
 * reset fails.
 */
final class HandoverTransport extends SMTPTransport {
  private final ServerWords words;
  private @Nullable Sending current;
  private boolean transactionOpen;
  private boolean askedForTls;

  /**
   * Not connected yet.
   *
   * @param words makes what the server says fit to be told
   */
  HandoverTransport(Session session, URLName server, boolean implicitTls, ServerWords words) {
    super(session, server, "smtp", implicitTls);
    this.words = words;
  }

  /** One message on its way. */
  private static final class Sending {
    final OutgoingMail mail;
    final Runnable handover;
    boolean handedOver;

    Sending(OutgoingMail mail, Runnable handover) {
      this.mail = mail;
      this.handover = handover;
    }
  }

  /**
   * Sends one message and returns once the server has taken it.
   *
   * @param message the bytes, every line ended by CR LF, the last one too
   * @param mail whose addresses they are
   * @param handover called after the last byte of the message and before the dot that ends it; what
   *     it throws is thrown on, the line is dropped and the message stays unsent
   * @throws ServerReply where the server says no: it has nothing of the message
   * @throws LineLost where no answer came; the line is of no further use
   */
  void send(byte[] message, OutgoingMail mail, Runnable handover) throws ServerReply, LineLost {
    Sending sending = new Sending(mail, handover);
    current = sending;
    try {
      resetIfNeeded();
      sendMessage(new Bytes(session, message), new Address[] {recipient(mail)});
      transactionOpen = false;
    } catch (ServerReply | LineLost known) {
      throw known;
    } catch (SMTPSendFailedException refused) {
      refuse(refused.getReturnCode(), String.valueOf(refused.getMessage()), sending);
    } catch (MessagingException | IllegalStateException lost) {
      rethrowHandoverFault(lost);
      throw new LineLost(said(firstLine(lost)), sending.handedOver);
    } finally {
      current = null;
    }
  }

  @Override
  protected void startTLS() throws MessagingException {
    askedForTls = true;
    super.startTLS();
    askedForTls = false;
  }

  /** Whether the server was asked to begin TLS (RFC 3207) and has not done so. */
  boolean askedForTls() {
    return askedForTls;
  }

  /** The library insists on an address; the command that names it is spoken in rcptTo. */
  private static InternetAddress recipient(OutgoingMail mail) {
    InternetAddress recipient = new InternetAddress();
    recipient.setAddress(mail.to().get(0).text());
    return recipient;
  }

  private void resetIfNeeded() throws MessagingException {
    if (transactionOpen) {
      simpleCommand("RSET");
    }
    transactionOpen = true;
  }

  @Override
  protected void mailFrom() throws MessagingException {
    OutgoingMail mail = sending().mail;
    if (mail.needsUtf8() && !supportsExtension("SMTPUTF8")) {
      throw new ServerReply(553, Message.of("delivery.asciiOnly"));
    }
    say("MAIL FROM:<" + mail.from().text() + (mail.needsUtf8() ? "> SMTPUTF8" : ">"));
  }

  @Override
  protected void rcptTo() throws MessagingException {
    for (MailAddress to : sending().mail.to()) {
      say("RCPT TO:<" + to.text() + ">");
    }
  }

  @Override
  protected void finishData() throws IOException, MessagingException {
    Sending sending = sending();
    try {
      sending.handover.run();
    } catch (RuntimeException notWritten) {
      throw new HandoverFault(notWritten);
    }
    sending.handedOver = true;
    say(".");
  }

  private void say(String command) throws MessagingException {
    int code = simpleCommand(command.getBytes(StandardCharsets.UTF_8));
    if (code < 200 || code > 299) {
      refuse(code, String.valueOf(getLastServerResponse()), sending());
    }
  }

  /** What an answer that is no consent means; the library gives -1 for the end of the line. */
  private void refuse(int code, String answer, Sending sending) throws ServerReply, LineLost {
    if (code >= 400 && code <= 599) {
      throw new ServerReply(code, said(answer));
    }
    throw new LineLost(Message.of("delivery.lineEnded"), sending.handedOver);
  }

  /** In the server's language, without the password, should the server have said it. */
  private Message said(String answer) {
    return Message.literal(words.clean(answer));
  }

  private Sending sending() {
    return Objects.requireNonNull(current);
  }

  private static void rethrowHandoverFault(Exception fault) {
    for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
      if (cause instanceof HandoverFault) {
        throw ((HandoverFault) cause).fault;
      }
    }
  }

  private static String firstLine(Exception fault) {
    Throwable cause = fault;
    while (cause.getCause() != null) {
      cause = cause.getCause();
    }
    return HeaderText.clean(String.valueOf(cause.getMessage()));
  }

  /** Carries a fault of the ledger past the library, which drops the line on every IOException. */
  private static final class HandoverFault extends IOException {
    private static final long serialVersionUID = 1L;

    private final transient RuntimeException fault;

    HandoverFault(RuntimeException fault) {
      super(fault);
      this.fault = fault;
    }
  }

  /** A message whose bytes are already there. */
  private static final class Bytes extends MimeMessage {
    private final byte[] bytes;

    Bytes(Session session, byte[] bytes) {
      super(session);
      this.bytes = bytes;
    }

    @Override
    public void writeTo(OutputStream out, String[] ignored) throws IOException {
      out.write(bytes);
    }
  }
}

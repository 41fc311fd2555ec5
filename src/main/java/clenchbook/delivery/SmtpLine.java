package clenchbook.delivery;

import clenchbook.delivery.message.OutgoingMail;
import clenchbook.texts.Message;
import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.URLName;
import java.security.cert.CertificateException;
import java.util.Optional;
import java.util.Properties;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLSocketFactory;
import org.jspecify.annotations.Nullable;

/**
 * The connection to one mail server: opened when first needed, kept, opened anew after it was lost.
 *
 * <p>TLS of at least version 1.2 with a trusted certificate that bears the host's name, unless the
 * server's {@link SmtpServer.Protection} says otherwise. The credential goes to this host alone and
 * only by the mechanisms PLAIN and LOGIN, which TLS protects.
 */
final class SmtpLine {
  /** An address literal (RFC 5321, section 4.1.4): the machine's own name is nobody's business. */
  private static final String OUR_NAME = "[127.0.0.1]";

  private static final int CONNECT_MILLIS = 30_000;

  private final SmtpServer server;
  private final Session session;
  private final ServerWords words;
  private @Nullable HandoverTransport transport;

  /**
   * @param server where to
   * @param sockets makes TLS sockets with another trust than the machine's; empty for the machine's
   */
  SmtpLine(SmtpServer server, Optional<SSLSocketFactory> sockets) {
    this.server = server;
    this.words = ServerWords.of(server.credential());
    Properties properties = properties(server);
    properties.put("mail.smtp.socketFactory", new PromptSocketFactory());
    sockets.ifPresent(factory -> properties.put("mail.smtp.ssl.socketFactory", factory));
    this.session = Session.getInstance(properties);
  }

  private static Properties properties(SmtpServer server) {
    Properties properties = new Properties();
    String millis = Long.toString(server.answerWithin().toMillis());
    properties.setProperty("mail.smtp.timeout", millis);
    properties.setProperty("mail.smtp.connectiontimeout", Integer.toString(CONNECT_MILLIS));
    properties.setProperty("mail.smtp.localhost", OUR_NAME);
    properties.setProperty("mail.smtp.auth.mechanisms", "PLAIN LOGIN");
    properties.setProperty("mail.smtp.auth", Boolean.toString(server.credential().isPresent()));
    properties.setProperty("mail.smtp.socketFactory.fallback", "false");
    properties.setProperty("mail.smtp.quitwait", "false");
    protect(properties, server);
    return properties;
  }

  private static void protect(Properties properties, SmtpServer server) {
    boolean tls = server.protection() != SmtpServer.Protection.NONE;
    boolean checked = server.protection() == SmtpServer.Protection.CHECKED;
    properties.setProperty("mail.smtp.starttls.enable", Boolean.toString(tls));
    properties.setProperty("mail.smtp.starttls.required", Boolean.toString(tls));
    properties.setProperty("mail.smtp.ssl.protocols", "TLSv1.3 TLSv1.2");
    properties.setProperty("mail.smtp.ssl.checkserveridentity", Boolean.toString(checked));
    if (tls && !checked) {
      properties.setProperty("mail.smtp.ssl.trust", "*");
    }
  }

  /**
   * Sends one message, opening the connection first where there is none.
   *
   * @throws ServerReply where the server says no
   * @throws LineLost where no answer came; the next call opens a new connection
   * @throws NoLine where there is no connection
   */
  void send(byte[] message, OutgoingMail mail, Runnable handover)
      throws ServerReply, LineLost, NoLine {
    HandoverTransport open = transport == null ? open() : transport;
    transport = open;
    boolean usable = false;
    try {
      open.send(message, mail, handover);
      usable = true;
    } catch (ServerReply reply) {
      usable = !reply.closesTheLine();
      throw reply;
    } finally {
      if (!usable) {
        close();
      }
    }
  }

  /** Ends the connection, if there is one; never fails. */
  void close() {
    HandoverTransport open = transport;
    transport = null;
    if (open != null) {
      try {
        open.close();
      } catch (MessagingException alreadyGone) {
        // The server closed first; there is nothing left to end.
      }
    }
  }

  private HandoverTransport open() throws NoLine {
    URLName name = new URLName("smtp", server.host(), server.port(), null, null, null);
    boolean tls = server.tlsFromFirstByte() && server.protection() != SmtpServer.Protection.NONE;
    HandoverTransport opening = new HandoverTransport(session, name, tls, words);
    String user = server.credential().map(SmtpCredential::user).orElse(null);
    String password = server.credential().map(SmtpCredential::password).orElse(null);
    try {
      opening.connect(server.host(), server.port(), user, password);
      return opening;
    } catch (AuthenticationFailedException refused) {
      throw loginRefused(opening.getLastReturnCode(), refused);
    } catch (MessagingException failed) {
      throw noLine(failed, opening);
    }
  }

  /** Only a plain no is final: a locked account is worse than a late mail. */
  private NoLine loginRefused(int code, AuthenticationFailedException refused) {
    boolean plainNo = code >= 500 && code <= 599;
    Message what =
        plainNo
            ? Message.of("delivery.loginRefused", server.name())
            : Message.of("delivery.noLoginNow", server.name());
    return new NoLine(what, !plainNo, refused);
  }

  private NoLine noLine(MessagingException failed, HandoverTransport opening) {
    if (hasCause(failed, CertificateException.class)) {
      return new NoLine(Message.of("delivery.untrusted", server.name()), false, failed);
    }
    if (hasCause(failed, SSLException.class)) {
      return new NoLine(Message.of("delivery.noProtectedLine", server.name()), true, failed);
    }
    if (String.valueOf(failed.getMessage()).contains("STARTTLS is required")) {
      return new NoLine(Message.of("delivery.noTls", server.name()), false, failed);
    }
    int code = opening.getLastReturnCode();
    if (code >= 400 && code <= 599) {
      return turnedAway(failed, opening, code);
    }
    return new NoLine(Message.of("delivery.unreachable", server.name()), true, failed);
  }

  /**
   * The server answered and said no, in its own words. Only a no that names a passing reason and
   * not the protection of the line is worth the waits of another try.
   */
  private NoLine turnedAway(MessagingException failed, HandoverTransport opening, int code) {
    String said = words.clean(String.valueOf(opening.getLastServerResponse()));
    return opening.askedForTls()
        ? new NoLine(Message.of("delivery.protectionRefused", server.name(), said), false, failed)
        : new NoLine(Message.of("delivery.takesNone", server.name(), said), code < 500, failed);
  }

  private static boolean hasCause(Throwable fault, Class<? extends Throwable> kind) {
    for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
      if (kind.isInstance(cause)) {
        return true;
      }
    }
    return false;
  }
}

package clenchbook.delivery;

import clenchbook.texts.Message;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;

/**
 * The mail server and how it is to be spoken to.
 *
 * @param host its name, as its certificate must bear it
 * @param port such as 587 or 465
 * @param tlsFromFirstByte whether TLS comes before all words (RFC 8314), else by STARTTLS (RFC
 *     3207)
 * @param credential given only where it is bound to this host; empty for a server that asks none
 * @param protection how much of TLS is insisted on
 * @param answerWithin how long to wait for an answer; RFC 5321, section 4.5.3.2.6, allows a server
 *     ten minutes to answer the end of a message
 */
public record SmtpServer(
    String host,
    int port,
    boolean tlsFromFirstByte,
    Optional<SmtpCredential> credential,
    Protection protection,
    Duration answerWithin) {
  /** The port of mail submission (RFC 6409). */
  public static final int SUBMISSION = 587;

  private static final int IMPLICIT_TLS = 465;
  private static final int HIGHEST_PORT = 65_535;
  private static final Duration PATIENCE = Duration.ofMinutes(10);

  /** How much of TLS is insisted on. */
  public enum Protection {
    /** TLS, with a trusted certificate that bears the host's name. */
    CHECKED,
    /** TLS with whatever certificate comes: only where the command line says so. */
    ANY_CERTIFICATE,
    /** No TLS: only where the command line says so. */
    NONE
  }

  /**
   * @throws UnusableServer where the host or port is none
   * @throws IllegalArgumentException where the credential is bound to another host
   */
  public SmtpServer {
    host = host.strip().toLowerCase(Locale.ROOT);
    if (!host.matches("[a-z0-9.:\\[\\]_-]+")) {
      throw new UnusableServer(Message.of("delivery.server.noHost"));
    }
    if (port < 1 || port > HIGHEST_PORT) {
      throw new UnusableServer(Message.of("delivery.server.noPort", Integer.toString(port)));
    }
    String mine = host;
    if (credential.filter(given -> !given.host().equals(mine)).isPresent()) {
      throw new IllegalArgumentException("the credential is bound to another host");
    }
  }

  /**
   * The server of a book's settings: TLS from the first byte on port 465, STARTTLS on every other.
   *
   * @param credential bound to this host
   * @param protection {@link Protection#CHECKED} unless the command line says otherwise
   * @throws IllegalArgumentException as the constructor
   */
  public static SmtpServer of(
      String host, int port, Optional<SmtpCredential> credential, Protection protection) {
    return new SmtpServer(host, port, port == IMPLICIT_TLS, credential, protection, PATIENCE);
  }

  /** Host and port, for messages. */
  public String name() {
    return host + ":" + port;
  }
}

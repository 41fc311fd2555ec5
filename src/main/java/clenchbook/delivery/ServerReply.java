package clenchbook.delivery;

import clenchbook.texts.Message;
import clenchbook.texts.Told;
import jakarta.mail.MessagingException;

/** The server said no, in so many words, before or after it had the whole message. */
final class ServerReply extends MessagingException implements Told {
  private static final long serialVersionUID = 1L;
  private static final int CLOSING = 421;

  private final int code;
  private final transient Message message;

  ServerReply(int code, Message message) {
    super(message.toString());
    this.code = code;
    this.message = message;
  }

  int code() {
    return code;
  }

  /** RFC 5321, section 4.2.1: a code that begins with 5 will not change by trying again. */
  boolean isPermanent() {
    return code >= 500 && code <= 599;
  }

  /** Nobody may send here without logging in first: no mail of the run will fare better. */
  boolean asksForLogin() {
    return code == 530 || code == 534 || code == 535 || code == 538;
  }

  boolean closesTheLine() {
    return code == CLOSING;
  }

  @Override
  public Message message() {
    return message;
  }
}

package clenchbook.delivery;

import java.util.Locale;

/**
 * A user and password together with the one host they are for.
 *
 * @param host the host name, in lower case
 * @param user as the server knows it
 * @param password never printed, logged or written
 */
public record SmtpCredential(String host, String user, String password) {
  /**
   * @throws IllegalArgumentException where a part is blank or holds a control character
   */
  public SmtpCredential {
    host = host.strip().toLowerCase(Locale.ROOT);
    user = user.strip();
    if (host.isEmpty() || user.isEmpty() || password.isEmpty()) {
      throw new IllegalArgumentException("a credential needs a host, a user and a password");
    }
    if (password.chars().anyMatch(Character::isISOControl)) {
      throw new IllegalArgumentException("a password holds no control character");
    }
  }

  /** Whether this credential may be given to that host in that user's name. */
  public boolean isFor(String otherHost, String otherUser) {
    return host.equals(otherHost.strip().toLowerCase(Locale.ROOT))
        && user.equals(otherUser.strip());
  }

  /** The user and the host; never the password. */
  @Override
  public String toString() {
    return user + " at " + host;
  }
}

package clenchbook.delivery;

/** There is no password to give; the message is one line for the terminal and holds no secret. */
public final class CredentialFault extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is missing or wrong. */
  public CredentialFault(String line) {
    super(line);
  }
}

package clenchbook.register;

/** The register can't be used; the message is one line that says what to do. */
public final class RegisterFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Says what is wrong.
   *
   * @param message one line, with what to do
   */
  public RegisterFault(String message) {
    super(message);
  }

  /**
   * Says what is wrong, and what caused it.
   *
   * @param message one line, with what to do
   * @param cause the database's own word
   */
  public RegisterFault(String message, Throwable cause) {
    super(message, cause);
  }
}

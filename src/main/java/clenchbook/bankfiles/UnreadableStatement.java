package clenchbook.bankfiles;

/** A bank file that can't be used, with the reason in one line. */
public final class UnreadableStatement extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Makes one.
   *
   * @param message the reason, in one line, without the file's name
   */
  public UnreadableStatement(String message) {
    super(message);
  }

  /**
   * Makes one.
   *
   * @param message the reason, in one line, without the file's name
   * @param cause what was seen
   */
  public UnreadableStatement(String message, Throwable cause) {
    super(message, cause);
  }
}

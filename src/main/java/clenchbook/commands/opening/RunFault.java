package clenchbook.commands.opening;

/** The run could not be done; the message is one line for the farrier. */
public final class RunFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Says why.
   *
   * @param message one line, with what to do
   */
  public RunFault(String message) {
    super(message);
  }

  /**
   * Says why, and what caused it.
   *
   * @param message one line, with what to do
   * @param cause the cause
   */
  public RunFault(String message, Throwable cause) {
    super(message, cause);
  }
}

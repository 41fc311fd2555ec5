package clenchbook.delivery;

/** No connection to the mail server came about; nothing of any mail has been sent over it. */
final class NoLine extends Exception {
  private static final long serialVersionUID = 1L;

  private final boolean passing;

  NoLine(String what, boolean passing, Throwable cause) {
    super(what, cause);
    this.passing = passing;
  }

  /** Whether another try later may fare better. */
  boolean mayPass() {
    return passing;
  }
}

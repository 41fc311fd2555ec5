package clenchbook.register;

/** The register's file cannot be read or written: the run cannot go on. */
public final class RegisterFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * A fault in one line.
   *
   * @param line what could not be done
   * @param cause what the database said
   */
  public RegisterFault(String line, Throwable cause) {
    super(line, cause);
  }
}

package clenchbook.backup;

/** A backup that can't be written, or a file that is none or is damaged; says why in one clause. */
public final class UnsoundBackup extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * Says why.
   *
   * @param message a clause without a full stop
   */
  public UnsoundBackup(String message) {
    super(message);
  }
}

package clenchbook.reading.rates;

/**
 * A rates file that cannot be used as it stands; the message names the file, the line and what is
 * wrong.
 */
public final class RefusedRatesException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Refuses with one sentence for the terminal. */
  public RefusedRatesException(String message) {
    super(message);
  }
}

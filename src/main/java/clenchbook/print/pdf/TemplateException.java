package clenchbook.print.pdf;

/** A page template that can't be used, in words for the farrier. */
public final class TemplateException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * A template that can't be used.
   *
   * @param message what is wrong, beginning with the file's name
   * @param cause what the report library said
   */
  public TemplateException(String message, Throwable cause) {
    super(message, cause);
  }
}

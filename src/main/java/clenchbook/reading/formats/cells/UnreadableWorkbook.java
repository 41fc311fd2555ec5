package clenchbook.reading.formats.cells;

import java.io.IOException;

/**
 * Says in one line why a file can't be used as a workbook at all. Bad rows and cells are never a
 * reason; they are problems beside the sound ones.
 */
public final class UnreadableWorkbook extends IOException {
  private static final long serialVersionUID = 1L;

  /**
   * Makes the refusal.
   *
   * @param message one line for the farrier, with what to do about it
   */
  public UnreadableWorkbook(String message) {
    super(message);
  }

  public UnreadableWorkbook(String message, Throwable cause) {
    super(message, cause);
  }

  /** Says that a sheet is listed whose part is missing: what else is missing nobody knows. */
  public static UnreadableWorkbook withoutSheet(String name) {
    String oneLine = name.replaceAll("\\s+", " ");
    return new UnreadableWorkbook(
        "the file is damaged: it lists the sheet '" + oneLine + "', which is not in it");
  }

  /** The refusal inside a library's exception, else the fallback. */
  public static IOException within(Throwable thrown, IOException fallback) {
    for (Throwable t = thrown; t != null; t = t.getCause()) {
      if (t instanceof UnreadableWorkbook refusal) {
        return refusal;
      }
    }
    return fallback;
  }
}

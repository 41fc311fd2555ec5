package clenchbook.reading.formats.cells;

import clenchbook.texts.Message;
import clenchbook.texts.Told;
import java.io.IOException;

/**
 * Says in one line why a file can't be used as a workbook at all. Bad rows and cells are never a
 * reason; they are problems beside the sound ones.
 */
public final class UnreadableWorkbook extends IOException implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message message;

  /**
   * Makes the refusal.
   *
   * @param message one line for the farrier, with what to do about it
   */
  public UnreadableWorkbook(Message message) {
    super(message.toString());
    this.message = message;
  }

  /**
   * Makes the refusal with what led to it.
   *
   * @param message one line for the farrier, with what to do about it
   * @param cause what led to it
   */
  public UnreadableWorkbook(Message message, Throwable cause) {
    super(message.toString(), cause);
    this.message = message;
  }

  @Override
  public Message message() {
    return message;
  }

  /** Says that a sheet is listed whose part is missing: what else is missing nobody knows. */
  public static UnreadableWorkbook withoutSheet(String name) {
    return new UnreadableWorkbook(Message.of("formats.sheetMissing", name.replaceAll("\\s+", " ")));
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

package clenchbook.delivery.wording;

/**
 * Something in the farrier's own wording that cannot be used; the built-in wording stands there.
 *
 * @param file the wording's file name
 * @param key the entry, or empty where the fault is the file's
 * @param problem what is wrong
 * @param expected what would be right
 */
public record WordingFault(String file, String key, String problem, String expected) {
  /** One line for the terminal. */
  public String line() {
    String where = key.isEmpty() ? file : file + " " + key;
    return where + ": " + problem + "; expected " + expected;
  }
}

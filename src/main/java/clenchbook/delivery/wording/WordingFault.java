package clenchbook.delivery.wording;

import clenchbook.texts.Message;

/**
 * Something in the farrier's own wording that cannot be used; the built-in wording stands there.
 *
 * @param file the wording's file name
 * @param key the entry, or empty where the fault is the file's
 * @param problem what is wrong
 * @param expected what would be right
 */
public record WordingFault(String file, String key, Message problem, Message expected) {
  /** One line for the terminal. */
  public Message line() {
    return key.isEmpty()
        ? Message.of("delivery.wording.fault", file, problem, expected)
        : Message.of("delivery.wording.entryFault", file, key, problem, expected);
  }
}

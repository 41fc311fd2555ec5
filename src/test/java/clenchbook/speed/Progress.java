package clenchbook.speed;

import java.util.Locale;

/** A line for whoever sits before the terminal and waits; nothing where there is no terminal. */
final class Progress {
  private Progress() {}

  static void say(String format, Object... arguments) {
    if (System.console() != null) {
      System.err.printf(Locale.ROOT, format + "%n", arguments);
    }
  }
}

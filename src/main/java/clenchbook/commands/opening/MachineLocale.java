package clenchbook.commands.opening;

import clenchbook.texts.Message;
import java.util.Locale;

/**
 * The machine's own locale, kept for what it is asked for: country, currency and language where the
 * book is silent. Everything else forgets it, since a library that writes numbers in the machine's
 * digits, or letters by its rules of small and capital, makes files that nobody can open.
 */
public final class MachineLocale {
  private static final char LOST_LETTER = '\uFFFD';

  private static final Locale OWN = Locale.getDefault();

  private MachineLocale() {}

  /** Makes everything in this process write by no country's habits; to be called first of all. */
  public static void setAside() {
    Locale.setDefault(Locale.ROOT);
  }

  /** The locale as it was when the process began. */
  static Locale own() {
    return OWN;
  }

  /**
   * What to add where a file's name could not be understood.
   *
   * @param name the name as this process got it
   * @return what to do where its letters were lost on the way, as under cron; else nothing
   */
  public static Message hint(String name) {
    return name.indexOf(LOST_LETTER) < 0 ? Message.NONE : Message.of("commands.lostLetters");
  }
}

package clenchbook.book;

import java.util.Locale;

/** How shoes are shaped. */
public enum Shaping {
  /** At the forge and anvil. */
  HOT,
  /** Cold, at the stall jack. */
  COLD,
  /** Not shaped. */
  NONE;

  /**
   * The word used in the workbook and in files.
   *
   * @return in lower case, words separated by spaces
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}

package clenchbook.tax.page;

import clenchbook.texts.Message;

/**
 * A word or two that stand in a file in English, and what people read in their own language.
 *
 * @param file as files have it, the same in every language; blank for nothing
 * @param said what a page says
 */
public record Wording(String file, Message said) {
  /** Nothing, in files and on pages. */
  public static final Wording NONE = new Wording("", Message.NONE);

  /**
   * Words of the program.
   *
   * @param file as files have them
   * @param key the key of the text, written out where it is used so that it can be found
   * @param gaps what fills the text's gaps
   * @return both
   */
  public static Wording of(String file, String key, Object... gaps) {
    return new Wording(file, Message.of(key, gaps));
  }

  /**
   * Words that are the same in every language, such as the name of a form's line.
   *
   * @param same the words; blank for nothing
   * @return both
   */
  public static Wording literal(String same) {
    return same.isEmpty() ? NONE : new Wording(same, Message.literal(same));
  }

  /** Whether there is nothing to say. */
  public boolean isEmpty() {
    return file.isEmpty();
  }
}

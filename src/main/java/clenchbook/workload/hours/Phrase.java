package clenchbook.workload.hours;

import clenchbook.texts.Message;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A few words that stand in the figures, which are English in every language, and on the pages,
 * which are in the farrier's.
 *
 * @param english as the figures have them; other programs look for them, so they stay as they are
 * @param said the same for the pages
 */
public record Phrase(String english, Message said) {

  /**
   * Words with their text.
   *
   * @param english as the figures have them
   * @param key the key of the text for the pages
   * @param gaps what fills that text's gaps
   * @return the words
   */
  public static Phrase of(String english, String key, Object... gaps) {
    return new Phrase(english, Message.of(key, gaps));
  }

  /**
   * Words one after another.
   *
   * @param between what stands between two of them: signs, no words
   * @param phrases the words, in order
   * @return all of them; empty words for none
   */
  public static Phrase joined(String between, List<Phrase> phrases) {
    return new Phrase(
        phrases.stream().map(Phrase::english).collect(Collectors.joining(between)),
        Message.joined(between, phrases.stream().map(Phrase::said).toList()));
  }
}

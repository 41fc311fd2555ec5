package clenchbook.tax.page;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Something to say to the preparer: the English sentence, which is also what a translation is found
 * by, and what fills its gaps.
 *
 * @param english the sentence, with {@code {0}}, {@code {1}} and so on for its gaps
 * @param gaps what fills them, as it is to be printed
 */
public record Sentence(String english, List<String> gaps) {
  /** Copies its list. */
  public Sentence {
    gaps = List.copyOf(gaps);
  }

  /** A sentence with these gaps filled. */
  public static Sentence of(String english, String... gaps) {
    return new Sentence(english, List.of(gaps));
  }

  /** The sentence in English. */
  public String inEnglish() {
    return filled(english, UnaryOperator.identity());
  }

  /**
   * The sentence in other words, which have the same gaps.
   *
   * @param written how what fills a gap is written in the language of these words
   */
  String filled(String words, UnaryOperator<String> written) {
    String text = words;
    for (int i = 0; i < gaps.size(); i++) {
      text = text.replace("{" + i + "}", written.apply(gaps.get(i)));
    }
    return text;
  }
}

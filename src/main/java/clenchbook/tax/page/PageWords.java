package clenchbook.tax.page;

import java.util.List;
import java.util.Map;

/**
 * The sentences of the page in one language. What has no translation is said in English, so that
 * nothing is left out.
 */
public final class PageWords {
  /** The language in which every sentence is written first. */
  public static final String ENGLISH = "en";

  private final String language;
  private final Map<String, String> sentences;

  private PageWords(String language, Map<String, String> sentences) {
    this.language = language;
    this.sentences = sentences;
  }

  /** The words of a language, as a two-letter code. */
  public static PageWords of(String language, Translations translations) {
    return new PageWords(language, translations.of(language));
  }

  /** The two-letter code of the language. */
  public String language() {
    return language;
  }

  /** The sentence in this language, its gaps filled. */
  public String say(Sentence sentence) {
    return sentence.filled(sentences.getOrDefault(sentence.english(), sentence.english()));
  }

  /** A sentence or word without gaps. */
  public String say(String english) {
    return sentences.getOrDefault(english, english);
  }

  /** All of them, in order. */
  public List<String> say(List<Sentence> all) {
    return all.stream().map(this::say).toList();
  }
}

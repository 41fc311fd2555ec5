package clenchbook.tax.page;

import clenchbook.reports.blocks.FigureText;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The sentences of the page in one language, with its numbers as that language writes them. What
 * has no translation is said in English, so that nothing is left out.
 */
public final class PageWords {
  /** The language in which every sentence is written first. */
  public static final String ENGLISH = "en";

  private static final int LONG = 5;

  private final String language;
  private final Map<String, String> sentences;
  private final Optional<FigureText> figures;

  private PageWords(String language, Map<String, String> sentences, Optional<FigureText> figures) {
    this.language = language;
    this.sentences = sentences;
    this.figures = figures;
  }

  /** The words of a language, as a two-letter code, with numbers as files have them. */
  public static PageWords of(String language, Translations translations) {
    return new PageWords(language, translations.of(language), Optional.empty());
  }

  /** The same with numbers as people read them. */
  public PageWords with(FigureText text) {
    return new PageWords(language, sentences, Optional.of(text));
  }

  /** The two-letter code of the language. */
  public String language() {
    return language;
  }

  /** The sentence in this language, its gaps filled. */
  public String say(Sentence sentence) {
    String words = sentences.getOrDefault(sentence.english(), sentence.english());
    return sentence.filled(words, this::say);
  }

  /** A sentence or word without gaps; a number as this language writes it. */
  public String say(String english) {
    return number(sentences.getOrDefault(english, english));
  }

  /** All of them, in order. */
  public List<String> say(List<Sentence> all) {
    return all.stream().map(this::say).toList();
  }

  /** An amount as this language writes it. */
  public String amount(BigDecimal amount) {
    return number(amount.toPlainString());
  }

  /**
   * A cell of a column of numbers, all of which are grouped alike; in a text of its own a whole
   * number of four digits is not, because it may be a year.
   */
  public String inColumn(String cell) {
    return isNumber(cell) && figures.isPresent() ? grouped(figures.get(), cell) : say(cell);
  }

  private static String grouped(FigureText text, String number) {
    BigDecimal value = new BigDecimal(number);
    return text.number(value, value.scale());
  }

  private static boolean isNumber(String text) {
    return text.matches("-?\\d+(\\.\\d+)?");
  }

  /** A text that is a plain number, as this language writes it; any other text as it is. */
  private String number(String text) {
    if (figures.isEmpty() || !isNumber(text)) {
      return text;
    }
    boolean maybeYear = text.matches("\\d{1," + (LONG - 1) + "}");
    return maybeYear ? text : grouped(figures.get(), text);
  }
}

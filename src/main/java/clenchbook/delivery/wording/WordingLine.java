package clenchbook.delivery.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One entry of a wording, its placeholders found.
 *
 * @param text as it was written
 * @param words the placeholders it names, in order
 */
record WordingLine(String text, List<MailWord> words) {
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)}");

  WordingLine {
    words = List.copyOf(words);
  }

  /** The placeholders of the text that no mail knows. */
  static List<String> strangersIn(String text) {
    return PLACEHOLDER
        .matcher(text)
        .results()
        .map(found -> found.group(1))
        .filter(name -> MailWord.find(name).isEmpty())
        .toList();
  }

  /**
   * @throws IllegalArgumentException where the text names a placeholder that no mail knows
   */
  static WordingLine of(String text) {
    List<MailWord> words = new ArrayList<>();
    for (MatchResult found : PLACEHOLDER.matcher(text).results().toList()) {
      words.add(
          MailWord.find(found.group(1))
              .orElseThrow(() -> new IllegalArgumentException(found.group())));
    }
    return new WordingLine(text, words);
  }

  /**
   * The text with the values in place, or empty where it is blank or a value is missing: a sentence
   * about a balance has no place in a mail without one.
   */
  Optional<String> filled(Map<MailWord, String> values) {
    if (text.isBlank() || !values.keySet().containsAll(words)) {
      return Optional.empty();
    }
    return Optional.of(
        PLACEHOLDER
            .matcher(text)
            .replaceAll(found -> Matcher.quoteReplacement(valueOf(found.group(1), values))));
  }

  private static String valueOf(String name, Map<MailWord, String> values) {
    return MailWord.find(name).map(values::get).orElse("");
  }
}

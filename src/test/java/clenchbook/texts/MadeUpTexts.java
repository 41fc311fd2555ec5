package clenchbook.texts;

import clenchbook.reading.texts.TextFiles;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A language that nobody speaks: the English texts with each word between ‹ and › and half as long
 * again. What fills a gap stays outside, so that a word that was never moved is seen there. Files
 * are English in every language, and so English stays what it is.
 */
public final class MadeUpTexts implements TextSource {
  private static final Pattern PART =
      Pattern.compile(
          "(\\{\\d+,choice,)|(\\{\\d+})|(})|(\\|?\\d+[#<])|([^\\s{}|#<]+)", Pattern.DOTALL);

  @Override
  public Optional<String> find(String language, String key) {
    Optional<String> english = TextFiles.OWN.find(Texts.ENGLISH, key);
    return language.equals(Texts.ENGLISH) ? english : english.map(MadeUpTexts::madeUp);
  }

  /** A pattern with each of its own words in brackets; its gaps and plurals stay what they are. */
  static String madeUp(String pattern) {
    StringBuilder made = new StringBuilder();
    Matcher part = PART.matcher(pattern);
    int depth = 0;
    int at = 0;
    while (part.find(at)) {
      made.append(pattern, at, part.start());
      String found = part.group();
      at = part.end();
      if (part.group(1) != null) {
        depth++;
      } else if (part.group(3) != null) {
        depth--;
      }
      boolean word = part.group(5) != null || part.group(4) != null && depth == 0;
      made.append(word ? bracketed(found) : found);
    }
    return made.append(pattern.substring(at)).toString();
  }

  private static String bracketed(String word) {
    boolean letters = word.chars().anyMatch(Character::isLetter);
    return letters ? "‹" + word + "·".repeat((word.length() + 1) / 2) + "›" : word;
  }
}

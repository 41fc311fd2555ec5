package clenchbook.texts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The words of an output that stand outside the brackets of {@link MadeUpTexts} and are none of the
 * book's own, in a run under it.
 */
public final class WordsOutside {
  private static final Pattern BRACKETED = Pattern.compile("‹[^›]*›");

  /** Names of files and folders, options, and the commands as they are typed. */
  private static final Pattern NAMED =
      Pattern.compile(
          "\\S*\\.(?:csv|pdf|ics|xlsx|json|eml|html|db|txt|properties)\\b|--[a-z][a-z-]*(?:"
              + " (?:YYYY-MM|YYYY|FILE|DIR|DATE))?|clenchbook"
              + " [a-z-]+|\\S*/outbox\\b|(?:figures|annex|outbox|invoices|statements|accountant)/\\S*");

  private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}\\p{M}]*(?:['’]\\p{L}+)*");

  /** Signs of units, and one letter alone. */
  private static final Set<String> UNITS =
      Set.of("min", "mm", "cm", "km", "kg", "dB", "dBA", "ms", "lb", "oz", "mi", "CR", "Hz");

  private final Set<String> own = new TreeSet<>();
  private final Pattern names;

  /**
   * Makes the judge.
   *
   * @param own the book's own texts, whose words may stand anywhere
   * @param names what the contract names, such as a sheet or setting, each as a whole
   */
  public WordsOutside(Collection<String> own, Collection<String> names) {
    own.forEach(text -> words(text).forEach(word -> this.own.add(word.toLowerCase(Locale.ROOT))));
    this.names =
        Pattern.compile(
            names.stream()
                .filter(name -> !name.isBlank())
                .sorted(Comparator.comparing(String::length).reversed())
                .map(Pattern::quote)
                .collect(Collectors.joining("|", "(?<!\\p{L})(?:", ")(?!\\p{L})")));
  }

  /** The words that are foreign in a text, each once. */
  public Set<String> in(String text) {
    String unsaid = BRACKETED.matcher(text).replaceAll(" | ").replaceAll("\\s+", " ");
    String bare = names.matcher(NAMED.matcher(unsaid).replaceAll(" ")).replaceAll(" ");
    Set<String> outside = new TreeSet<>();
    for (String word : words(bare)) {
      boolean known = UNITS.contains(word) || own.contains(word.toLowerCase(Locale.ROOT));
      if (word.length() > 1 && !known) {
        outside.add(word);
      }
    }
    return outside;
  }

  /** Whether every bracket that opens closes: a text that was cut lost its end. */
  static boolean isWhole(String text) {
    return text.chars().filter(sign -> sign == '‹').count()
        == text.chars().filter(sign -> sign == '›').count();
  }

  private static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    WORD.matcher(text).results().forEach(found -> words.add(found.group()));
    return words;
  }
}

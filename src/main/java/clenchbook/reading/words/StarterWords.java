package clenchbook.reading.words;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * The words that a starter in a language bears for sheets, headings and settings: the first of each
 * line of the lists, so that what is written is what is read.
 */
public final class StarterWords {
  /** These are called the same everywhere. */
  private static final Set<String> INTERNATIONAL = Set.of("IBAN", "BIC", "Logo");

  private final Map<String, String> sheets = new HashMap<>();
  private final Map<String, String> settings = new HashMap<>();

  private StarterWords() {}

  /**
   * The words of a language.
   *
   * @param language ISO 639-1; English keeps the canonical names, and so does one without lists
   */
  public static StarterWords of(String language) {
    StarterWords words = new StarterWords();
    if (!language.equals("en")) {
      String sheet = "";
      for (WordLists.Line line : WordLists.section("sheets")) {
        sheet = line.indented() ? sheet : line.key();
        if (line.language().equals(language) && !line.words().isEmpty()) {
          String key = line.indented() ? sheet + "/" + line.key() : sheet;
          words.sheets.putIfAbsent(key, first(line));
        }
      }
      for (WordLists.Line line : WordLists.section("settings")) {
        if (line.language().equals(language) && !line.words().isEmpty()) {
          words.settings.putIfAbsent(line.key(), first(line));
        }
      }
    }
    return words;
  }

  private static String first(WordLists.Line line) {
    String word = line.words().get(0);
    return word.startsWith("~") ? word.substring(1) : word;
  }

  /** The word for a sheet by its canonical name. */
  public String sheet(String title) {
    return sheets.getOrDefault(title, title);
  }

  /** The word for a heading of a sheet, both by their canonical names. */
  public String heading(String sheet, String heading) {
    return sheets.getOrDefault(sheet + "/" + heading, heading);
  }

  /** The word for a setting by its canonical name. */
  public String setting(String title) {
    return INTERNATIONAL.contains(title) ? title : settings.getOrDefault(title, title);
  }

  /**
   * The word for a sheet, heading or setting.
   *
   * @param name the sheet's canonical name, alone or before a slash and the heading's or setting's
   */
  public String word(String name) {
    int slash = name.indexOf('/');
    if (slash < 0) {
      return sheet(name);
    }
    String rest = name.substring(slash + 1);
    return name.startsWith("Settings/") && settings.containsKey(rest)
        ? setting(rest)
        : heading(name.substring(0, slash), rest);
  }
}

package clenchbook.reading.words;

import clenchbook.book.Setting;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What settings and their choices may be called, in all the languages that the program knows. */
public final class SettingWords {
  private static final class English {
    static final Map<String, Setting> NAMES = names(List.of(WordLists.ENGLISH));
    static final Map<String, String> VALUES = values(List.of(WordLists.ENGLISH));
  }

  private static final class Foreign {
    static final Map<String, Setting> NAMES = names(WordLists.FOREIGN);
    static final Map<String, String> VALUES = values(WordLists.FOREIGN);
  }

  private SettingWords() {}

  private static Map<String, Setting> names(List<String> languages) {
    Map<String, Setting> names = new HashMap<>();
    Map<String, Setting> titles = new HashMap<>();
    for (Setting setting : Setting.values()) {
      titles.put(setting.title(), setting);
      SameWords.forms(setting.title()).forEach(form -> names.putIfAbsent(form, setting));
    }
    for (WordLists.Line line : WordLists.section("settings", languages)) {
      Setting setting = titles.get(line.key());
      if (setting == null) {
        throw new IllegalStateException("no setting is called " + line.key());
      }
      for (String word : line.words()) {
        SameWords.forms(word).forEach(form -> names.putIfAbsent(form, setting));
      }
    }
    return Map.copyOf(names);
  }

  private static Map<String, String> values(List<String> languages) {
    Map<String, String> values = new HashMap<>();
    for (WordLists.Line line : WordLists.section("setting values", languages)) {
      line.words().forEach(word -> values.putIfAbsent(SameWords.bare(word), line.key()));
    }
    return Map.copyOf(values);
  }

  /** The setting that these words name. */
  public static Optional<Setting> find(String words) {
    List<String> forms = new ArrayList<>(SameWords.forms(words));
    forms.add(SameWords.bare(words));
    return found(English.NAMES, forms).or(() -> found(Foreign.NAMES, forms));
  }

  private static Optional<Setting> found(Map<String, Setting> names, List<String> forms) {
    return forms.stream().filter(names::containsKey).findFirst().map(names::get);
  }

  /** The usual word for a setting in a language; its English name where the list has none. */
  public static String in(String language, Setting setting) {
    return WordLists.section("settings").stream()
        .filter(line -> line.language().equals(language) && !language.equals("en"))
        .filter(line -> line.key().equals(setting.title()))
        .findFirst()
        .map(line -> line.words().get(0))
        .orElse(setting.title());
  }

  /**
   * The one of a setting's choices that a text means.
   *
   * @param choices the choices there are
   * @param text as typed
   */
  public static Optional<String> choice(List<String> choices, String text) {
    String bare = SameWords.bare(text);
    return choices.stream()
        .filter(choice -> SameWords.bare(choice).equals(bare))
        .findFirst()
        .or(() -> Optional.ofNullable(English.VALUES.get(bare)).filter(choices::contains))
        .or(() -> Optional.ofNullable(Foreign.VALUES.get(bare)).filter(choices::contains));
  }
}

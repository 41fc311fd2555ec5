package clenchbook.reading.words;

import clenchbook.book.Setting;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What settings and their choices may be called, in all the languages that the program knows. */
public final class SettingWords {
  private static final class Names {
    static final Map<String, Setting> BY_BARE = names();
  }

  private static final class Values {
    static final Map<String, String> BY_BARE = values();
  }

  private SettingWords() {}

  private static Map<String, Setting> names() {
    Map<String, Setting> names = new HashMap<>();
    Map<String, Setting> titles = new HashMap<>();
    for (Setting setting : Setting.values()) {
      titles.put(setting.title(), setting);
      SameWords.forms(setting.title()).forEach(form -> names.putIfAbsent(form, setting));
    }
    for (WordLists.Line line : WordLists.section("settings")) {
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

  private static Map<String, String> values() {
    Map<String, String> values = new HashMap<>();
    for (WordLists.Line line : WordLists.section("setting values")) {
      line.words().forEach(word -> values.putIfAbsent(SameWords.bare(word), line.key()));
    }
    return Map.copyOf(values);
  }

  /** The setting that these words name. */
  public static Optional<Setting> find(String words) {
    return SameWords.forms(words).stream()
        .flatMap(form -> Optional.ofNullable(Names.BY_BARE.get(form)).stream())
        .findFirst();
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
        .or(() -> Optional.ofNullable(Values.BY_BARE.get(bare)).filter(choices::contains));
  }
}

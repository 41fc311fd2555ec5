package clenchbook.reading.words;

import java.util.AbstractMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The words for the choices of one list, by their bare form. English ones are looked at first;
 * those of other languages are read when a word is none of them. Not to be changed.
 */
final class ChoiceWords<T> extends AbstractMap<String, T> {
  private final String list;
  private final Map<String, T> byName = new HashMap<>();
  private final Map<String, T> english;
  private Optional<Map<String, T>> all = Optional.empty();

  ChoiceWords(String list, List<T> choices, Function<T, String> nameOf) {
    this.list = list;
    choices.forEach(choice -> byName.put(nameOf.apply(choice), choice));
    this.english = words(List.of(WordLists.ENGLISH));
  }

  private Map<String, T> words(List<String> languages) {
    Map<String, T> words = new HashMap<>();
    boolean inside = false;
    for (WordLists.Line line : WordLists.section("cells", languages)) {
      if (!line.indented()) {
        inside = line.key().equals(list);
      } else if (inside) {
        T choice = byName.get(line.key());
        if (choice == null) {
          throw new IllegalStateException(list + " has no choice " + line.key());
        }
        line.all().forEach(word -> words.putIfAbsent(SameWords.bare(word), choice));
      }
    }
    return words;
  }

  private synchronized Map<String, T> all() {
    if (all.isEmpty()) {
      all = Optional.of(Map.copyOf(words(WordLists.LANGUAGES)));
    }
    return all.get();
  }

  @Override
  public @Nullable T get(Object word) {
    T found = english.get(word);
    return found == null ? all().get(word) : found;
  }

  @Override
  public boolean containsKey(Object word) {
    return english.containsKey(word) || all().containsKey(word);
  }

  @Override
  public Set<Map.Entry<String, T>> entrySet() {
    return all().entrySet();
  }

  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return list.hashCode();
  }
}

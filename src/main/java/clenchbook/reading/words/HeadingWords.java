package clenchbook.reading.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The names of one kind of sheet and the words for its headings, in some of the languages. */
final class HeadingWords {
  private static final String WEAK = "~";

  private final Set<String> names = new HashSet<>();
  private final Map<String, String> headings = new HashMap<>();
  private final Map<String, String> withoutMarks = new HashMap<>();
  private final Map<String, List<String>> weak = new HashMap<>();
  private final Map<String, String> ofLanguage = new HashMap<>();
  private final Map<String, String> spelled = new LinkedHashMap<>();
  private final List<String> namesSpelled = new ArrayList<>();

  void addNames(WordLists.Line line) {
    line.all().forEach(name -> names.add(SameWords.bare(name)));
    namesSpelled.addAll(line.all());
    if (!line.words().isEmpty()) {
      keep(line.language(), "", line.words().get(0));
    }
  }

  void addHeading(WordLists.Line line) {
    String heading = line.key();
    spelled.putIfAbsent(heading, heading);
    line.words().forEach(word -> spelled.putIfAbsent(word.replace(WEAK, ""), heading));
    if (line.language().equals(WordLists.ENGLISH)) {
      SameWords.forms(heading).forEach(form -> headings.putIfAbsent(form, heading));
    }
    if (!line.words().isEmpty()) {
      keep(line.language(), heading, line.words().get(0).replace(WEAK, ""));
    }
    for (String word : line.words()) {
      if (word.startsWith(WEAK)) {
        String bare = SameWords.bare(word);
        weak.computeIfAbsent(bare, unused -> new ArrayList<>()).add(heading);
      } else {
        SameWords.forms(word).forEach(form -> headings.putIfAbsent(form, heading));
        withoutMarks.putIfAbsent(SameWords.bare(word), heading);
      }
    }
  }

  private void keep(String language, String heading, String own) {
    ofLanguage.putIfAbsent(language + "\n" + heading, own);
  }

  /** Every word as it is written, with its heading. */
  Map<String, String> spelled() {
    return spelled;
  }

  /** Every name of the sheet as it is written. */
  List<String> namesSpelled() {
    return namesSpelled;
  }

  boolean isName(String bareName) {
    return names.contains(bareName);
  }

  Optional<String> heading(WordForms words) {
    String found = headings.get(words.writtenOut());
    if (found == null) {
      found = headings.get(words.bare());
    }
    return Optional.ofNullable(found == null ? withoutMarks.get(words.bare()) : found);
  }

  List<String> weak(WordForms words) {
    return weak.getOrDefault(words.bare(), List.of());
  }

  /** The usual word of a language, for a heading or, where that is empty, for the sheet. */
  Optional<String> in(String language, String heading) {
    return Optional.ofNullable(ofLanguage.get(language + "\n" + heading));
  }
}

package clenchbook.reading.words;

import clenchbook.book.SheetKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The words of one kind of sheet: its names, its headings, what it needs and never has. */
public final class SheetWords {
  private static final String WEAK = "~";

  private final SheetKind kind;
  private final String title;
  private final String bareTitle;
  private final Set<String> names = new HashSet<>();
  private final Map<String, String> headings = new LinkedHashMap<>();
  private final Map<String, String> withoutMarks = new HashMap<>();
  private final Map<String, List<String>> weak = new HashMap<>();
  private final List<String> canonical = new ArrayList<>();
  private final List<List<String>> needs = new ArrayList<>();
  private final List<String> never = new ArrayList<>();
  private final Map<String, String> ofLanguage = new HashMap<>();

  SheetWords(SheetKind kind, String title) {
    this.kind = kind;
    this.title = title;
    this.bareTitle = SameWords.bare(title);
  }

  void addNames(WordLists.Line line) {
    line.all().forEach(name -> names.add(SameWords.bare(name)));
    line.words().stream().findFirst().ifPresent(own -> keep(line.language(), "", own));
  }

  void add(WordLists.Line line) {
    String start = line.key();
    if (start.startsWith("needs ")) {
      WordLists.split(start.substring(6)).forEach(need -> needs.add(List.of(need.split("\\|"))));
    } else if (start.startsWith("never ")) {
      never.addAll(WordLists.split(start.substring(6)));
    } else {
      addHeading(line);
    }
  }

  private void addHeading(WordLists.Line line) {
    String heading = line.key();
    if (line.language().equals("en")) {
      canonical.add(heading);
      SameWords.forms(heading).forEach(form -> headings.putIfAbsent(form, heading));
    }
    line.words().stream()
        .findFirst()
        .ifPresent(own -> keep(line.language(), heading, own.replace(WEAK, "")));
    for (String word : line.words()) {
      if (word.startsWith(WEAK)) {
        addWeak(word.substring(1), heading);
      } else {
        SameWords.forms(word).forEach(form -> headings.putIfAbsent(form, heading));
        withoutMarks.putIfAbsent(SameWords.bare(word), heading);
      }
    }
  }

  private void addWeak(String word, String heading) {
    weak.computeIfAbsent(SameWords.bare(word), unused -> new ArrayList<>()).add(heading);
  }

  private void keep(String language, String heading, String own) {
    ofLanguage.putIfAbsent(language + "\n" + heading, own);
  }

  SheetKind kind() {
    return kind;
  }

  /** The sheet's own name in the program. */
  public String title() {
    return title;
  }

  String bareTitle() {
    return bareTitle;
  }

  /** The usual name of the sheet in a language; the program's own where the list has none. */
  public String titleIn(String language) {
    return in(language, "", title);
  }

  /** The usual word for a heading in a language; the heading itself where the list has none. */
  public String headingIn(String language, String heading) {
    return in(language, heading, heading);
  }

  private String in(String language, String heading, String otherwise) {
    return language.equals("en")
        ? otherwise
        : ofLanguage.getOrDefault(language + "\n" + heading, otherwise);
  }

  boolean isCalled(String bareName) {
    return names.contains(bareName);
  }

  /** The program's own headings, in order. */
  public List<String> canonicalHeadings() {
    return List.copyOf(canonical);
  }

  /** The program's heading that these words mean. */
  public Optional<String> heading(String words) {
    return heading(WordForms.of(words));
  }

  /** The same, for words whose forms are known. */
  public Optional<String> heading(WordForms words) {
    return Optional.ofNullable(headings.get(words.writtenOut()))
        .or(() -> Optional.ofNullable(headings.get(words.bare())))
        .or(() -> Optional.ofNullable(withoutMarks.get(words.bare())));
  }

  /**
   * The headings that words mean only where no other column of the sheet has that meaning, the
   * likeliest first: in a sheet of visits without a price, a cost is what it costs the client.
   */
  public List<String> weakHeadings(WordForms words) {
    return weak.getOrDefault(words.bare(), List.of());
  }

  /** Whether these headings make the sheet. */
  public boolean isMadeBy(Set<String> found) {
    return missing(found).isEmpty();
  }

  /** The needs that these headings do not meet, each as its alternatives. */
  public List<List<String>> missing(Set<String> found) {
    return needs.stream().filter(need -> need.stream().noneMatch(found::contains)).toList();
  }

  /** The headings that a sheet of this kind never has. */
  public List<String> never() {
    return List.copyOf(never);
  }
}

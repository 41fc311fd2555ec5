package clenchbook.reading.words;

import clenchbook.book.SheetKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The words of one kind of sheet: its names, its headings, what it needs and never has. English
 * words are looked at first; those of other languages are read when a word is none of them.
 */
public final class SheetWords {
  private final SheetKind kind;
  private final String title;
  private final String bareTitle;
  private final HeadingWords english = new HeadingWords();
  private final List<String> canonical = new ArrayList<>();
  private final List<List<String>> needs = new ArrayList<>();
  private final List<String> never = new ArrayList<>();

  SheetWords(SheetKind kind, WordLists.Line names) {
    this.kind = kind;
    this.title = names.key();
    this.bareTitle = SameWords.bare(title);
    english.addNames(names);
  }

  void add(WordLists.Line line) {
    String start = line.key();
    if (start.startsWith("needs ")) {
      WordLists.split(start.substring(6)).forEach(need -> needs.add(List.of(need.split("\\|"))));
    } else if (start.startsWith("never ")) {
      never.addAll(WordLists.split(start.substring(6)));
    } else {
      canonical.add(start);
      english.addHeading(line);
    }
  }

  private HeadingWords foreign() {
    return Vocabulary.foreign(kind);
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
    return in(language, "").orElse(title);
  }

  /** The usual word for a heading in a language; the heading itself where the list has none. */
  public String headingIn(String language, String heading) {
    return in(language, heading).orElse(heading);
  }

  private Optional<String> in(String language, String heading) {
    return language.equals(WordLists.ENGLISH) ? Optional.empty() : foreign().in(language, heading);
  }

  boolean isCalled(String bareName) {
    return english.isName(bareName) || foreign().isName(bareName);
  }

  /** Every word for a heading in any language, as it is written, with the heading it means. */
  public Map<String, String> spelled() {
    Map<String, String> all = new LinkedHashMap<>(english.spelled());
    foreign().spelled().forEach(all::putIfAbsent);
    return all;
  }

  /** Every name of the sheet in any language, as it is written. */
  public List<String> namesSpelled() {
    List<String> all = new ArrayList<>(english.namesSpelled());
    all.addAll(foreign().namesSpelled());
    return all;
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
    return english.heading(words).or(() -> foreign().heading(words));
  }

  /**
   * The headings that words mean only where no other column of the sheet has that meaning, the
   * likeliest first: in a sheet of visits without a price, a cost is what it costs the client.
   */
  public List<String> weakHeadings(WordForms words) {
    List<String> all = new ArrayList<>(english.weak(words));
    all.addAll(foreign().weak(words));
    return all;
  }

  /** Whether these headings make the sheet. */
  public boolean isMadeBy(Set<String> found) {
    for (List<String> need : needs) {
      if (need.stream().noneMatch(found::contains)) {
        return false;
      }
    }
    return true;
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

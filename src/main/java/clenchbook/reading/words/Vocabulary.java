package clenchbook.reading.words;

import clenchbook.book.SheetKind;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What sheets and headings may be called, in all the languages that the program knows. */
public final class Vocabulary {
  private static final class Loaded {
    static final Vocabulary OWN = new Vocabulary();
  }

  private static final class Foreign {
    static final Map<SheetKind, HeadingWords> WORDS = words();

    private static Map<SheetKind, HeadingWords> words() {
      Map<SheetKind, HeadingWords> all = new EnumMap<>(SheetKind.class);
      HeadingWords current = new HeadingWords();
      for (WordLists.Line line : WordLists.section("sheets", WordLists.FOREIGN)) {
        if (line.indented()) {
          current.addHeading(line);
        } else {
          current = all.computeIfAbsent(kind(line), unused -> new HeadingWords());
          current.addNames(line);
        }
      }
      return all;
    }
  }

  private final Map<SheetKind, SheetWords> sheets = new EnumMap<>(SheetKind.class);

  private Vocabulary() {
    SheetWords current = null;
    for (WordLists.Line line : WordLists.section("sheets", List.of(WordLists.ENGLISH))) {
      if (!line.indented()) {
        current = new SheetWords(kind(line), line);
        sheets.put(kind(line), current);
      } else if (current != null) {
        current.add(line);
      }
    }
  }

  private static SheetKind kind(WordLists.Line line) {
    return SheetKind.valueOf(line.key().toUpperCase(Locale.ROOT));
  }

  /** The program's own lists. */
  public static Vocabulary load() {
    return Loaded.OWN;
  }

  /** The words of a kind of sheet in all languages but English. */
  static HeadingWords foreign(SheetKind kind) {
    HeadingWords words = Foreign.WORDS.get(kind);
    if (words == null) {
      throw new IllegalStateException("no other language has a word for " + kind);
    }
    return words;
  }

  /** The words of one kind of sheet. */
  public SheetWords of(SheetKind kind) {
    SheetWords words = sheets.get(kind);
    if (words == null) {
      throw new IllegalStateException("the list of words lacks a sheet: " + kind);
    }
    return words;
  }

  /** The sheet of a name that is exactly the program's own. */
  public Optional<SheetKind> canonicalSheet(String name) {
    String bare = SameWords.bare(name);
    return sheets.values().stream()
        .filter(words -> words.bareTitle().equals(bare))
        .map(SheetWords::kind)
        .findFirst();
  }

  /** The sheets that a name may mean, by its synonyms. */
  public List<SheetKind> sheetsCalled(String name) {
    String bare = SameWords.bare(name);
    return sheets.values().stream()
        .filter(words -> words.isCalled(bare))
        .map(SheetWords::kind)
        .toList();
  }
}

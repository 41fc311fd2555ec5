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

  private final Map<SheetKind, SheetWords> sheets = new EnumMap<>(SheetKind.class);

  private Vocabulary() {
    SheetWords current = null;
    for (WordLists.Line line : WordLists.section("sheets")) {
      if (!line.indented()) {
        current = sheet(line.key());
        current.addNames(line);
      } else if (current != null) {
        current.add(line);
      }
    }
  }

  /** The program's own lists. */
  public static Vocabulary load() {
    return Loaded.OWN;
  }

  private SheetWords sheet(String title) {
    SheetKind kind = SheetKind.valueOf(title.toUpperCase(Locale.ROOT));
    return sheets.computeIfAbsent(kind, unused -> new SheetWords(kind, title));
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

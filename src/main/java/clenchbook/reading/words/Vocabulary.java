package clenchbook.reading.words;

import clenchbook.book.SheetKind;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What sheets and headings may be called, from the list of words that the program carries. */
public final class Vocabulary {
  private static final String LIST = "words.txt";

  private final Map<SheetKind, SheetWords> sheets = new EnumMap<>(SheetKind.class);

  private Vocabulary() {}

  /** Reads the program's own list. */
  public static Vocabulary load() {
    try (InputStream stream = Vocabulary.class.getResourceAsStream(LIST)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its list of words: " + LIST);
      }
      return parse(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  static Vocabulary parse(String list) {
    Vocabulary vocabulary = new Vocabulary();
    SheetWords current = null;
    for (String line : list.lines().toList()) {
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      if (!line.startsWith(" ")) {
        current = vocabulary.addSheet(line);
      } else if (current != null) {
        current.add(line.strip());
      }
    }
    return vocabulary;
  }

  private SheetWords addSheet(String line) {
    List<String> names = names(line);
    SheetKind kind = SheetKind.valueOf(names.get(0).toUpperCase(Locale.ROOT));
    SheetWords words = new SheetWords(kind, names);
    sheets.put(kind, words);
    return words;
  }

  private static List<String> names(String line) {
    String[] sides = line.split(" = ", 2);
    List<String> names = new ArrayList<>(List.of(sides[0].strip()));
    if (sides.length > 1) {
      for (String name : sides[1].split(",")) {
        names.add(name.strip());
      }
    }
    return names;
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
        .filter(words -> SameWords.bare(words.title()).equals(bare))
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

  /** The words of one sheet. */
  public static final class SheetWords {
    private final SheetKind kind;
    private final String title;
    private final Set<String> names;
    private final Map<String, String> headings = new LinkedHashMap<>();
    private final List<String> canonical = new ArrayList<>();
    private final List<List<String>> needs = new ArrayList<>();
    private final List<String> never = new ArrayList<>();

    SheetWords(SheetKind kind, List<String> names) {
      this.kind = kind;
      this.title = names.get(0);
      this.names = Set.copyOf(names.stream().map(SameWords::bare).distinct().toList());
    }

    private void add(String line) {
      if (line.startsWith("needs ")) {
        for (String need : line.substring(6).split(",")) {
          needs.add(List.of(need.strip().split("\\|")));
        }
      } else if (line.startsWith("never ")) {
        for (String refused : line.substring(6).split(",")) {
          never.add(refused.strip());
        }
      } else {
        addHeading(names(line));
      }
    }

    private void addHeading(List<String> words) {
      canonical.add(words.get(0));
      for (String word : words) {
        for (String form : SameWords.forms(word)) {
          headings.putIfAbsent(form, words.get(0));
        }
      }
    }

    SheetKind kind() {
      return kind;
    }

    /** The sheet's own name in the program. */
    public String title() {
      return title;
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
      return headingOfBare(SameWords.bare(words));
    }

    /** The same, for words already bare. */
    public Optional<String> headingOfBare(String bare) {
      return Optional.ofNullable(headings.get(bare));
    }

    /** Every bare form with the heading it means. */
    Map<String, String> forms() {
      return Map.copyOf(headings);
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
}

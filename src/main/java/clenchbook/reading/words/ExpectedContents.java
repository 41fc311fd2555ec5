package clenchbook.reading.words;

import clenchbook.book.SheetKind;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What the columns of each sheet usually hold, in the program's own list. */
public final class ExpectedContents {
  /**
   * What one column holds.
   *
   * @param contents a word for it
   * @param rare whether few books have the column
   */
  public record Expected(String contents, boolean rare) {}

  private static final class Loaded {
    static final Map<SheetKind, Map<String, Expected>> SHEETS = sheets();
  }

  private ExpectedContents() {}

  private static Map<SheetKind, Map<String, Expected>> sheets() {
    Map<SheetKind, Map<String, Expected>> sheets = new EnumMap<>(SheetKind.class);
    Map<String, Expected> current = new LinkedHashMap<>();
    for (WordLists.Line line : WordLists.section("contents", List.of(WordLists.ENGLISH))) {
      if (line.indented()) {
        List<String> words = line.words();
        current.put(line.key(), new Expected(words.get(0), words.contains("rare")));
      } else {
        current = new LinkedHashMap<>();
        sheets.put(SheetKind.valueOf(line.key().toUpperCase(Locale.ROOT)), current);
      }
    }
    return sheets;
  }

  /** What a column of a sheet holds; empty where the list does not say. */
  public static Optional<Expected> of(SheetKind kind, String heading) {
    return Optional.ofNullable(Loaded.SHEETS.getOrDefault(kind, Map.of()).get(heading));
  }

  /** The sheets that the list knows, in the order of the book. */
  public static List<SheetKind> kinds() {
    return List.copyOf(Loaded.SHEETS.keySet());
  }
}

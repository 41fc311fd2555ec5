package clenchbook.reading;

import clenchbook.book.Setting;
import clenchbook.book.SheetKind;
import clenchbook.reading.cells.SoundCells;
import clenchbook.reading.recognise.HeadingCell;
import clenchbook.reading.recognise.SheetLayout;
import clenchbook.reading.rows.SettingsOutcome;
import clenchbook.reading.words.SameWords;
import clenchbook.reading.words.StarterWords;
import clenchbook.texts.BookName;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * What a book calls its sheets, headings and settings, for the sentences that name them. What the
 * book lacks is named by the program's own word where most of the book is, else by the word of a
 * starter in the farrier's language. Not thread-safe.
 */
final class NamesOfBook implements UnaryOperator<String> {
  private final Map<String, String> own = new HashMap<>();
  private final Map<String, String> sheets = new HashMap<>();

  /** Kinds of which there are several sheets, one a month: no name of one stands for all. */
  private final Set<String> several = new HashSet<>();

  private final String language;
  private int canonical;
  private Optional<StarterWords> starter = Optional.empty();

  private NamesOfBook(String language) {
    this.language = language;
  }

  /**
   * The names of a book.
   *
   * @param layouts its tables
   * @param settings its settings
   * @return the name for each {@link BookName#name()}
   */
  static UnaryOperator<String> of(List<SheetLayout> layouts, SettingsOutcome settings) {
    NamesOfBook names = new NamesOfBook(settings.settings().text(Setting.LANGUAGE));
    layouts.forEach(names::add);
    settings.names().forEach((setting, name) -> names.put(sheetOf(setting), name));
    return names;
  }

  private static String sheetOf(Setting setting) {
    return SheetKind.SETTINGS.title() + "/" + setting.title();
  }

  private void add(SheetLayout layout) {
    String sheet = layout.kind().title();
    if (!sheets.computeIfAbsent(sheet, unused -> layout.name()).equals(layout.name())) {
      several.add(sheet);
    }
    put(sheet, layout.name());
    for (HeadingCell heading : layout.headings().cells()) {
      if (!heading.heading().isEmpty()) {
        put(sheet + "/" + heading.heading(), heading.cell().shown());
      }
    }
  }

  private void put(String name, String written) {
    String brief = SoundCells.brief(written).replaceAll("\\R", " ").strip();
    if (!brief.isEmpty() && own.putIfAbsent(name, brief) == null && isCanonical(name, brief)) {
      canonical++;
    }
  }

  private static boolean isCanonical(String name, String written) {
    return SameWords.bare(BookName.PLAIN.apply(name)).equals(SameWords.bare(written));
  }

  @Override
  public String apply(String name) {
    String found = own.get(name);
    if (found != null && !several.contains(name)) {
      return found;
    }
    return canonical > 0 && 2 * canonical >= own.size()
        ? BookName.PLAIN.apply(name)
        : starter().word(name);
  }

  private StarterWords starter() {
    if (starter.isEmpty()) {
      starter = Optional.of(StarterWords.of(language));
    }
    return starter.get();
  }

  /** Whether both books call everything alike. */
  @Override
  public boolean equals(Object other) {
    return other instanceof NamesOfBook names
        && own.equals(names.own)
        && several.equals(names.several)
        && language.equals(names.language);
  }

  @Override
  public int hashCode() {
    return Objects.hash(own, several, language);
  }
}

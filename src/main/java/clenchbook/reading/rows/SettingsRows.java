package clenchbook.reading.rows;

import clenchbook.book.Setting;
import clenchbook.book.SheetKind;
import clenchbook.problem.CellRef;
import clenchbook.problem.NearestName;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.cells.RowCells;
import clenchbook.reading.cells.SoundCells;
import clenchbook.reading.cells.WordCell;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.words.OwnMeaning;
import clenchbook.reading.words.OwnWords;
import clenchbook.reading.words.SettingWords;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
import clenchbook.texts.TextSource;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The rows of Settings: first gathered, then read, since the country says how numbers are meant.
 */
public final class SettingsRows {
  private static final int MOST_ROWS = 2_000;

  private final OwnWords own;
  private final Consumer<Problem> problems;
  private final Map<Setting, Entry> entries = new EnumMap<>(Setting.class);
  private final List<Entry> unknown = new ArrayList<>();
  private int count;

  /** A row of Settings. */
  private record Entry(CellRef nameAt, CellRef valueAt, String name, Optional<Cell> value) {}

  public SettingsRows(OwnWords own, Consumer<Problem> problems) {
    this.own = own;
    this.problems = problems;
  }

  /** Whether these words name a setting. */
  static boolean isSetting(String words) {
    return SettingWords.find(words).isPresent();
  }

  /** Takes one row; false when it says nothing at all. */
  public boolean add(RowCells row) {
    String name = row.text("Setting");
    if (name.isEmpty()) {
      if (row.has("Value")) {
        Message problem = Message.of("cells.missing", row.called("Setting"));
        row.warn(ProblemKind.NAME_MISSING, "Setting", problem, Message.of("rows.setting.aName"));
      }
      return false;
    }
    Entry entry = new Entry(row.at("Setting"), row.at("Value"), name, row.cell("Value"));
    Optional<OwnMeaning> mine = own.meaning(row.source().sheet(), "Settings", name);
    if (mine.filter(OwnMeaning::leftOut).isPresent()) {
      return false;
    }
    String meant = mine.map(OwnMeaning::means).orElse(name);
    Optional<Setting> setting = SettingWords.find(meant);
    setting.ifPresentOrElse(found -> put(found, entry), () -> unknown.add(entry));
    return setting.isPresent() && ++count < MOST_ROWS;
  }

  /** A setting given twice: the lower row counts, as with prices. */
  private void put(Setting setting, Entry entry) {
    Entry earlier = entries.put(setting, entry);
    if (earlier != null) {
      problems.accept(
          Problem.warning(
              ProblemKind.NAME_TWICE,
              entry.nameAt(),
              Message.of("rows.setting.twice", called(setting), earlier.nameAt().cell()),
              Message.of("rows.setting.once"),
              entry.name()));
    }
  }

  /** The settings in force, with a problem for each that is unknown or can't be used. */
  public SettingsOutcome read(Locale machine, boolean from1904, TextSource texts) {
    unknown.forEach(this::sayUnknown);
    SettingReading reading = new SettingReading(machine, from1904);
    Map<Setting, String> given = new EnumMap<>(Setting.class);
    Map<Setting, CellRef> cells = new EnumMap<>(Setting.class);
    for (Setting setting : SettingReading.order()) {
      Entry entry = entries.get(setting);
      if (entry != null && entry.value().isPresent() && !isBlank(entry.value().get())) {
        Optional<String> value = reading.read(setting, entry.value().get());
        if (value.isPresent()) {
          given.put(setting, value.get());
          cells.put(setting, entry.valueAt());
        } else {
          cells.put(setting, entry.valueAt());
          sayUnusable(setting, entry, reading.expected(setting));
        }
      }
    }
    return new SettingsOutcome(given, cells, blanks(), names(), reading, texts);
  }

  private Map<Setting, String> names() {
    Map<Setting, String> names = new EnumMap<>(Setting.class);
    entries.forEach((setting, entry) -> names.put(setting, entry.name()));
    return names;
  }

  private Map<Setting, CellRef> blanks() {
    Map<Setting, CellRef> blanks = new EnumMap<>(Setting.class);
    entries.forEach(
        (setting, entry) -> {
          if (entry.value().map(SettingsRows::isBlank).orElse(true)) {
            blanks.put(setting, entry.valueAt());
          }
        });
    return blanks;
  }

  private static boolean isBlank(Cell cell) {
    return WordCell.trimmed(cell.shown()).isEmpty();
  }

  private static BookName called(Setting setting) {
    return BookName.of(SheetKind.SETTINGS.title(), setting.title());
  }

  private void sayUnknown(Entry entry) {
    List<String> titles = new ArrayList<>();
    for (Setting setting : Setting.values()) {
      titles.add(setting.title());
    }
    String shown = SoundCells.brief(entry.name());
    Message problem =
        NearestName.find(entry.name(), titles)
            .map(near -> Message.of("rows.setting.misspelt", shown, near))
            .orElseGet(() -> Message.of("rows.setting.unknown", shown));
    problems.accept(
        Problem.warning(
            ProblemKind.SETTING_UNKNOWN,
            entry.nameAt(),
            problem,
            Message.of("rows.setting.ofGuide"),
            shown));
  }

  private void sayUnusable(Setting setting, Entry entry, Message expected) {
    String shown = SoundCells.brief(entry.value().map(Cell::shown).orElse(""));
    Message problem =
        setting == Setting.TAX_REGIME
            ? Message.of("rows.setting.unusableRegime", called(setting), shown)
            : Message.of("rows.setting.unusable", called(setting), shown);
    problems.accept(
        Problem.warning(ProblemKind.SETTING_UNUSABLE, entry.valueAt(), problem, expected, shown));
  }
}

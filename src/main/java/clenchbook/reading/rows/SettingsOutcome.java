package clenchbook.reading.rows;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.problem.CellRef;
import clenchbook.reading.cells.Measure;
import clenchbook.reading.cells.ReadingRules;
import clenchbook.texts.BookName;
import clenchbook.texts.TextSource;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The settings that a book gives, and how the rest of it is read.
 *
 * @param given usable values in canonical form
 * @param cells where they stand
 * @param blanks the value cells of rows that were left blank
 * @param names how the farrier wrote the settings that the book has
 * @param reading the locale and order of dates found
 * @param texts where the texts of the farrier's language come from
 */
public record SettingsOutcome(
    Map<Setting, String> given,
    Map<Setting, CellRef> cells,
    Map<Setting, CellRef> blanks,
    Map<Setting, String> names,
    SettingReading reading,
    TextSource texts) {

  /** The settings in force, before it is known what the book calls its sheets. */
  public Settings settings() {
    return settings(BookName.PLAIN);
  }

  /**
   * The settings in force.
   *
   * @param bookNames what the book calls its sheets, headings and settings
   */
  public Settings settings(UnaryOperator<String> bookNames) {
    return new Settings(given, cells, blanks, reading.machineValues(), texts, bookNames);
  }

  /** How the book's other sheets are read under these settings, the machine's filling in. */
  public ReadingRules rules(boolean from1904) {
    Settings all = settings();
    Optional<String> currency =
        Optional.of(all.text(Setting.CURRENCY)).filter(code -> !code.isEmpty());
    Measure distance = all.text(Setting.DISTANCE_UNIT).equals("mile") ? Measure.MILE : Measure.KM;
    return new ReadingRules(reading.locale(), currency, reading.dateOrder(), distance, from1904);
  }
}

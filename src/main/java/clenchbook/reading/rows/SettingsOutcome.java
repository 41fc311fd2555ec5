package clenchbook.reading.rows;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.problem.CellRef;
import clenchbook.reading.cells.ReadingRules;
import java.util.Map;
import java.util.Optional;

/**
 * The settings that a book gives, and how the rest of it is read.
 *
 * @param given usable values in canonical form
 * @param cells where they stand
 * @param blanks the value cells of rows that were left blank
 * @param reading the locale and order of dates found
 */
public record SettingsOutcome(
    Map<Setting, String> given,
    Map<Setting, CellRef> cells,
    Map<Setting, CellRef> blanks,
    SettingReading reading) {

  public Settings settings() {
    return new Settings(given, cells, blanks, reading.machineValues());
  }

  public ReadingRules rules(boolean from1904) {
    Optional<String> currency = Optional.ofNullable(given.get(Setting.CURRENCY));
    return new ReadingRules(reading.locale(), currency, reading.dateOrder(), from1904);
  }
}

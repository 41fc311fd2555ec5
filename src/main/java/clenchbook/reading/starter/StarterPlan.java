package clenchbook.reading.starter;

import java.util.List;
import java.util.Locale;

/**
 * What stands in the starter workbook of a language, from the lists that the program carries.
 *
 * @param language ISO 639-1
 * @param howTo the lines of the first sheet
 * @param titles what belongs to no column
 * @param sheets the sheets in their order
 */
public record StarterPlan(String language, List<String> howTo, Titles titles, List<Sheet> sheets) {
  /** The languages that there is a starter in, ISO 639-1. */
  public static final List<String> LANGUAGES = List.of("en", "de", "fr", "es", "nl");

  /** Copies its lists. */
  public StarterPlan {
    howTo = List.copyOf(howTo);
    sheets = List.copyOf(sheets);
  }

  /**
   * Titles and notes that belong to no column.
   *
   * @param start the first sheet's name
   * @param setting the heading over the settings' names
   * @param value the heading over their values
   * @param settingNote the note on a setting's name
   * @param valueNote the note on its value
   * @param purpose the heading over what a setting is for
   */
  public record Titles(
      String start,
      String setting,
      String value,
      String settingNote,
      String valueNote,
      String purpose) {}

  /**
   * A sheet of the starter.
   *
   * @param title its canonical name
   * @param name its name in the language
   * @param purpose what it is for
   * @param columns its columns; for Settings the setting and its value
   * @param examples the example rows, their cells in the order of the columns
   * @param settings the settings of Settings
   */
  public record Sheet(
      String title,
      String name,
      String purpose,
      List<Column> columns,
      List<List<String>> examples,
      List<SettingLine> settings) {}

  /**
   * A column.
   *
   * @param heading its canonical heading
   * @param name its heading in the language
   * @param folded whether it is folded away at first
   * @param width in characters
   * @param kind text, size, date, money or number
   * @param offered a list of cells or of words in quotes; empty for none
   * @param purpose what it is for
   */
  public record Column(
      String heading,
      String name,
      boolean folded,
      int width,
      String kind,
      String offered,
      String purpose) {}

  /**
   * A line of Settings.
   *
   * @param title its canonical name
   * @param name the setting in the language
   * @param offered a list of words in quotes; empty for none
   * @param purpose what it is for, and what a blank means
   */
  public record SettingLine(String title, String name, String offered, String purpose) {}

  /** The language of a locale, English where there is no starter in it. */
  public static String languageOf(Locale locale) {
    return LANGUAGES.contains(locale.getLanguage()) ? locale.getLanguage() : "en";
  }

  /**
   * Reads the plan of a language.
   *
   * @param language one of {@link #LANGUAGES}
   */
  public static StarterPlan load(String language) {
    return new PlanReader(language).plan();
  }
}

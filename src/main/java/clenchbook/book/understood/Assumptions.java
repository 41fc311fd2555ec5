package clenchbook.book.understood;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was assumed for want of a setting that everything else hangs on. */
public final class Assumptions {
  private static final List<Setting> FROM_LOCALE =
      List.of(Setting.COUNTRY, Setting.CURRENCY, Setting.LANGUAGE);
  private static final List<Setting> BY_DEFAULT = List.of(Setting.UNITS, Setting.DISTANCE_UNIT);

  private Assumptions() {}

  /**
   * The assumptions of a book.
   *
   * @param settings its settings
   * @param understood what was made of its columns
   * @return one each, in words, such as {@code Country GB, from this machine's locale}; empty where
   *     the book says everything
   */
  public static List<String> of(Settings settings, Understood understood) {
    List<String> lines = new ArrayList<>();
    for (Setting setting : FROM_LOCALE) {
      if (!settings.isGiven(setting)) {
        fromLocale(settings, setting).ifPresent(lines::add);
      }
    }
    for (Setting setting : BY_DEFAULT) {
      if (!settings.isGiven(setting)) {
        lines.add(setting.title() + " " + settings.text(setting));
      }
    }
    if (!settings.isGiven(Setting.DATE_ORDER)) {
      lines.add(Setting.DATE_ORDER.title() + " " + dateOrder(understood));
    }
    return List.copyOf(lines);
  }

  private static Optional<String> fromLocale(Settings settings, Setting setting) {
    String value = settings.text(setting);
    if (!value.isEmpty()) {
      boolean byCountry = setting == Setting.CURRENCY && settings.isGiven(Setting.COUNTRY);
      String why = byCountry ? ", the country's" : ", from this machine's locale";
      return Optional.of(setting.title() + " " + value + why);
    }
    return setting == Setting.CURRENCY
        ? Optional.of(setting.title() + " " + settings.currency() + ", for want of any other")
        : Optional.empty();
  }

  /** The columns that settle it themselves; elsewhere only a day with one meaning is read. */
  private static String dateOrder(Understood understood) {
    List<String> settled =
        understood.columns().stream()
            .filter(column -> column.note().contains(" first, by "))
            .map(column -> column.sheet() + "!" + column.column() + ": " + column.note())
            .toList();
    return settled.isEmpty()
        ? "none: a day typed as text is read where it can mean only one day, with dots day first"
        : String.join(", ", settled);
  }
}

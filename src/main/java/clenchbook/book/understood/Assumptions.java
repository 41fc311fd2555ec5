package clenchbook.book.understood;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.SheetKind;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
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
  public static List<Message> of(Settings settings, Understood understood) {
    List<Message> lines = new ArrayList<>();
    for (Setting setting : FROM_LOCALE) {
      if (!settings.isGiven(setting)) {
        fromLocale(settings, setting).ifPresent(lines::add);
      }
    }
    for (Setting setting : BY_DEFAULT) {
      if (!settings.isGiven(setting)) {
        lines.add(Message.of("book.assumed.byDefault", called(setting), settings.text(setting)));
      }
    }
    if (!settings.isGiven(Setting.DATE_ORDER)) {
      lines.add(
          Message.of("book.assumed.byDefault", called(Setting.DATE_ORDER), dateOrder(understood)));
    }
    return List.copyOf(lines);
  }

  private static BookName called(Setting setting) {
    return BookName.of(SheetKind.SETTINGS.title(), setting.title());
  }

  private static Optional<Message> fromLocale(Settings settings, Setting setting) {
    String value = settings.text(setting);
    if (!value.isEmpty()) {
      boolean byCountry = setting == Setting.CURRENCY && settings.isGiven(Setting.COUNTRY);
      return Optional.of(
          byCountry
              ? Message.of("book.assumed.theCountrys", called(setting), value)
              : Message.of("book.assumed.fromLocale", called(setting), value));
    }
    return setting == Setting.CURRENCY
        ? Optional.of(Message.of("book.assumed.forWant", called(setting), settings.currency()))
        : Optional.empty();
  }

  /** The columns that settle it themselves; elsewhere only a day with one meaning is read. */
  private static Message dateOrder(Understood understood) {
    List<Message> settled =
        understood.columns().stream()
            .filter(UnderstoodColumn::settlesOrder)
            .map(Assumptions::placed)
            .toList();
    return settled.isEmpty()
        ? Message.of("book.assumed.noDateOrder")
        : Message.joined(", ", settled);
  }

  private static Message placed(UnderstoodColumn column) {
    String place = column.sheet() + "!" + column.column() + ": ";
    return Message.joined("", List.of(Message.literal(place), column.note()));
  }
}

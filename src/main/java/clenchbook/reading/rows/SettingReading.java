package clenchbook.reading.rows;

import clenchbook.book.Setting;
import clenchbook.reading.cells.DateText;
import clenchbook.reading.cells.DayNumber;
import clenchbook.reading.cells.Measure;
import clenchbook.reading.cells.MinutesText;
import clenchbook.reading.cells.MoneyText;
import clenchbook.reading.cells.NumberText;
import clenchbook.reading.cells.WordCell;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.CellFormat;
import clenchbook.reading.words.CountryNames;
import clenchbook.reading.words.LanguageNames;
import clenchbook.reading.words.SettingWords;
import clenchbook.reading.words.YesNo;
import clenchbook.texts.Message;
import clenchbook.values.Iban;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads the values of settings, each by its type, to their canonical texts. */
final class SettingReading {
  private static final List<Setting> FIRST =
      List.of(Setting.COUNTRY, Setting.LANGUAGE, Setting.CURRENCY, Setting.DATE_ORDER);
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final BigDecimal MOST = new BigDecimal(1_000_000_000);

  private final Locale machine;
  private final boolean from1904;
  private final Map<Setting, String> found = new EnumMap<>(Setting.class);

  SettingReading(Locale machine, boolean from1904) {
    this.machine = machine;
    this.from1904 = from1904;
  }

  /** The settings that say how the others are read come first. */
  static List<Setting> order() {
    List<Setting> order = new ArrayList<>(FIRST);
    for (Setting setting : Setting.values()) {
      if (!FIRST.contains(setting)) {
        order.add(setting);
      }
    }
    return List.copyOf(order);
  }

  /** The canonical value; empty when it can't be used. */
  Optional<String> read(Setting setting, Cell cell) {
    if (cell instanceof Cell.Fault || cell instanceof Cell.NoValue) {
      return Optional.empty();
    }
    String text = WordCell.trimmed(cell.shown());
    Optional<String> value =
        switch (setting.type()) {
          case TEXT -> Optional.of(text.replaceAll("\\R", "\n"));
          case DECIMAL -> number(setting, cell).map(BigDecimal::toPlainString);
          case WHOLE -> whole(setting, cell, text);
          case YES_NO -> YesNo.read(cell).map(yes -> yes ? "yes" : "no");
          case CHOICE -> SettingWords.choice(setting.choices(), text);
          case DATE -> date(cell).map(LocalDate::toString);
          case COUNTRY -> CountryNames.code(text);
          case CURRENCY -> currency(text);
          case LANGUAGE -> LanguageNames.code(text);
          case IBAN -> Iban.of(text).map(Iban::compact);
        };
    value.ifPresent(usable -> found.put(setting, usable));
    return value;
  }

  /** What a setting may hold. */
  Message expected(Setting setting) {
    return switch (setting.type()) {
      case TEXT -> Message.of("cells.text.some");
      case DECIMAL -> Message.of("cells.number.zeroOrMore");
      case WHOLE ->
          setting == Setting.YEAR_STARTS
              ? Message.of("rows.setting.month")
              : Message.of("cells.number.whole");
      case YES_NO -> Message.of("cells.yesNo.expected");
      case CHOICE -> Message.inTurn("sheets.or", setting.choices());
      case DATE -> Message.of("rows.setting.day");
      case COUNTRY -> Message.of("rows.setting.country");
      case CURRENCY -> Message.of("rows.setting.currency");
      case IBAN -> Message.of("rows.setting.iban");
      case LANGUAGE -> Message.of("rows.setting.language");
    };
  }

  private Optional<BigDecimal> number(Setting setting, Cell cell) {
    Optional<BigDecimal> value = Optional.empty();
    if (cell instanceof Cell.Number number) {
      boolean percent = number.format().kind() == CellFormat.Kind.PERCENT;
      value = number.decimal().map(share -> percent ? times100(share) : share);
    } else if (cell instanceof Cell.Text text) {
      String bare = text.text().strip().replaceFirst("\\s*%$", "");
      value =
          numbers()
              .read(bare)
              .or(() -> money(bare))
              .map(NumberText.Reading::value)
              .or(() -> units().read(setting, bare));
    } else if (cell instanceof Cell.Span span && setting.title().endsWith(" min")) {
      value = Optional.of(MinutesText.ofSeconds(span.length().toSeconds()));
    }
    return value.filter(number -> number.signum() >= 0 && number.compareTo(MOST) < 0);
  }

  private static BigDecimal times100(BigDecimal share) {
    BigDecimal percent = share.multiply(HUNDRED).stripTrailingZeros();
    return percent.scale() < 0 ? percent.setScale(0) : percent;
  }

  private NumberText numbers() {
    return new NumberText(locale());
  }

  private SettingUnits units() {
    boolean miles = found.getOrDefault(Setting.DISTANCE_UNIT, "").equals("mile");
    return new SettingUnits(numbers(), moneyText(), miles ? Measure.MILE : Measure.KM);
  }

  private MoneyText moneyText() {
    return new MoneyText(numbers(), Optional.ofNullable(found.get(Setting.CURRENCY)));
  }

  private Optional<NumberText.Reading> money(String text) {
    MoneyText money = moneyText();
    return money.foreign(text).isPresent() ? Optional.empty() : money.read(text);
  }

  private Optional<String> whole(Setting setting, Cell cell, String text) {
    Optional<BigDecimal> number = number(setting, cell).filter(value -> value.scale() <= 0);
    if (setting == Setting.YEAR_STARTS) {
      return number
          .map(BigDecimal::intValue)
          .or(() -> DateText.month(text))
          .filter(month -> month >= 1 && month <= 12)
          .map(String::valueOf);
    }
    return number.map(BigDecimal::toPlainString);
  }

  private Optional<LocalDate> date(Cell cell) {
    if (cell instanceof Cell.Moment moment) {
      return Optional.of(moment.at().toLocalDate()).filter(DateText::plausible);
    }
    Optional<LocalDate> byNumber =
        cell instanceof Cell.Number number
            ? number
                .decimal()
                .filter(DayNumber::plausible)
                .map(value -> DayNumber.day(value, from1904))
            : Optional.empty();
    List<LocalDate> days = DateText.read(cell.shown(), dateOrder()).days();
    return byNumber.or(() -> days.size() == 1 ? Optional.of(days.get(0)) : Optional.empty());
  }

  private Optional<String> currency(String text) {
    String sign = text.toUpperCase(Locale.ROOT);
    return MoneyText.currencyOf(sign, found.getOrDefault(Setting.COUNTRY, ""))
        .filter(SettingReading::hasMinorUnit);
  }

  private static boolean hasMinorUnit(String code) {
    try {
      return Currency.getInstance(code).getDefaultFractionDigits() >= 0;
    } catch (IllegalArgumentException noCurrency) {
      return false;
    }
  }

  /** The locale of the book: its own country and language, the machine's where it gives none. */
  Locale locale() {
    String language = found.getOrDefault(Setting.LANGUAGE, machine.getLanguage());
    String country = found.getOrDefault(Setting.COUNTRY, machine.getCountry());
    return new Locale(language, country);
  }

  Optional<DateText.Order> dateOrder() {
    return Optional.ofNullable(found.get(Setting.DATE_ORDER))
        .map(order -> DateText.Order.valueOf(order.toUpperCase(Locale.ROOT)));
  }

  /** What the machine's locale says of country, currency and language. */
  Map<Setting, String> machineValues() {
    Map<Setting, String> values = new EnumMap<>(Setting.class);
    if (!machine.getLanguage().isEmpty()) {
      values.put(Setting.LANGUAGE, machine.getLanguage());
    }
    if (machine.getCountry().matches("[A-Z]{2}")) {
      values.put(Setting.COUNTRY, machine.getCountry());
    }
    currencyOf(found.getOrDefault(Setting.COUNTRY, machine.getCountry()))
        .ifPresent(code -> values.put(Setting.CURRENCY, code));
    return values;
  }

  private static Optional<String> currencyOf(String country) {
    if (!country.matches("[A-Z]{2}")) {
      return Optional.empty();
    }
    try {
      return Optional.ofNullable(Currency.getInstance(new Locale("", country)))
          .map(Currency::getCurrencyCode)
          .filter(SettingReading::hasMinorUnit);
    } catch (IllegalArgumentException noSuchCountry) {
      return Optional.empty();
    }
  }
}

package clenchbook.reading.rows;

import clenchbook.book.Setting;
import clenchbook.reading.cells.Measure;
import clenchbook.reading.cells.MeasureText;
import clenchbook.reading.cells.MoneyText;
import clenchbook.reading.cells.NumberText;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Settings with a unit typed behind the number: {@code 2 weeks}, {@code 0.67 per mile}. */
final class SettingUnits {
  private static final int DECIMALS = 10;
  private static final Pattern PER =
      Pattern.compile("(.+?)\\s*(?:/|\\b(?:per|an?|pro|par|por)\\b)(.+)");
  private static final Pattern AN_HOUR = Pattern.compile("(.+?)\\s*(?:/|per|an)\\s*(?:h|hr|hour)");

  private static final Map<Setting, Measure> OF =
      Map.ofEntries(
          Map.entry(Setting.TERMS_DAYS, Measure.DAY),
          Map.entry(Setting.CALLBACK_DAYS, Measure.DAY),
          Map.entry(Setting.LEAD_DAYS, Measure.DAY),
          Map.entry(Setting.FORGE_SETUP_MIN, Measure.MINUTE),
          Map.entry(Setting.FORGE_SETUP_GAS_MIN, Measure.MINUTE),
          Map.entry(Setting.HOURS_PER_YEAR, Measure.HOUR),
          Map.entry(Setting.WEEKLY_HOURS_LIMIT, Measure.HOUR),
          Map.entry(Setting.YEARLY_HOURS_LIMIT, Measure.HOUR),
          Map.entry(Setting.GAS_BURN_KG, Measure.KG),
          Map.entry(Setting.GAS_BURN_LB, Measure.LB));

  private final MeasureText measures;
  private final MoneyText money;
  private final Measure distance;

  SettingUnits(NumberText numbers, MoneyText money, Measure distance) {
    this.measures = new MeasureText(numbers);
    this.money = money;
    this.distance = distance;
  }

  /** The number in the setting's own unit; empty where it has none, or another stands there. */
  Optional<BigDecimal> read(Setting setting, String text) {
    return switch (setting) {
      case VEHICLE_COST -> price(text, distance);
      case GAS_COST_KG -> price(text, Measure.KG_OF_PROPANE);
      case GAS_COST_LB -> price(text, Measure.LB_OF_PROPANE);
      case GAS_COST_GALLON -> price(text, Measure.GALLON_OF_PROPANE);
      default -> number(setting, text);
    };
  }

  private Optional<BigDecimal> number(Setting setting, String text) {
    Matcher anHour = AN_HOUR.matcher(text);
    String bare = anHour.matches() ? anHour.group(1) : text;
    return Optional.ofNullable(OF.get(setting))
        .flatMap(own -> measures.read(bare, own))
        .map(NumberText.Reading::value);
  }

  /** A price for one unit as the price for one of the setting's own, to ten decimals half-up. */
  private Optional<BigDecimal> price(String text, Measure own) {
    Matcher per = PER.matcher(text);
    if (!per.matches() || money.foreign(per.group(1)).isPresent()) {
      return Optional.empty();
    }
    Optional<BigDecimal> units = own.convert(BigDecimal.ONE, per.group(2).strip());
    return money
        .read(per.group(1))
        .flatMap(amount -> units.map(inOwn -> dividedBy(amount.value(), inOwn)));
  }

  private static BigDecimal dividedBy(BigDecimal amount, BigDecimal units) {
    return amount
        .divide(units, MathContext.DECIMAL128)
        .setScale(DECIMALS, RoundingMode.HALF_UP)
        .stripTrailingZeros();
  }
}

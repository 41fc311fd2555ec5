package clenchbook.book;

import clenchbook.problem.CellRef;
import clenchbook.texts.BookName;
import clenchbook.texts.TextSource;
import clenchbook.texts.Texts;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The settings in force: what the farrier gave, in canonical form (decimals with a point, {@code
 * yes}/{@code no}, ISO dates and codes, choices in lower case), and the defaults for the rest.
 */
public final class Settings {
  /** Kilograms in an avoirdupois pound, exact by definition. */
  public static final BigDecimal KG_PER_LB = new BigDecimal("0.45359237");

  /** Pounds in a US gallon of propane at 60 F; trade tables give 4.2 to 4.24. */
  public static final BigDecimal LB_PER_GALLON = new BigDecimal("4.24");

  private final Map<Setting, String> given;
  private final Map<Setting, CellRef> cells;
  private final Map<Setting, CellRef> blanks;
  private final Map<Setting, String> machine;
  private final TextSource texts;
  private final UnaryOperator<String> names;

  /**
   * Makes settings of which none has a blank row.
   *
   * @param given usable values the farrier gave, canonical; none blank
   * @param cells where they stand; a cell without a value in {@code given} can't be used
   * @param machine country, currency and language of the machine's locale, used where not given
   * @param texts where the texts of the farrier's language come from
   */
  public Settings(
      Map<Setting, String> given,
      Map<Setting, CellRef> cells,
      Map<Setting, String> machine,
      TextSource texts) {
    this(given, cells, Map.of(), machine, texts, BookName.PLAIN);
  }

  /**
   * Makes settings.
   *
   * @param given usable values the farrier gave, canonical; none blank
   * @param cells where they stand; a cell without a value in {@code given} can't be used
   * @param blanks the value cells of rows that were left blank
   * @param machine country, currency and language of the machine's locale, used where not given
   * @param texts where the texts of the farrier's language come from
   * @param names what the book calls its sheets, headings and settings, by {@link BookName#name()}
   */
  public Settings(
      Map<Setting, String> given,
      Map<Setting, CellRef> cells,
      Map<Setting, CellRef> blanks,
      Map<Setting, String> machine,
      TextSource texts,
      UnaryOperator<String> names) {
    this.given = copy(given);
    this.cells = copy(cells);
    this.blanks = copy(blanks);
    this.machine = copy(machine);
    this.texts = texts;
    this.names = names;
  }

  private static <V> Map<Setting, V> copy(Map<Setting, V> source) {
    Map<Setting, V> copy = new EnumMap<>(Setting.class);
    copy.putAll(source);
    return copy;
  }

  /**
   * What the program says to the farrier.
   *
   * @return the texts of the farrier's own language, in which everything but letters is written
   */
  public Texts texts() {
    return Texts.of(text(Setting.LANGUAGE), text(Setting.COUNTRY), texts).naming(names);
  }

  /**
   * Whether the farrier gave a usable value.
   *
   * @param setting the setting
   * @return false when its default stands
   */
  public boolean isGiven(Setting setting) {
    return given.containsKey(setting);
  }

  /**
   * Where the value stands.
   *
   * @param setting the setting
   * @return its value cell; empty when not given
   */
  public Optional<CellRef> cell(Setting setting) {
    return Optional.ofNullable(cells.get(setting)).filter(at -> isGiven(setting));
  }

  /**
   * Where a value stands or is to stand.
   *
   * @param setting the setting
   * @return its value cell, usable, unusable or blank; where the book has no row of it, the sheet
   *     Settings without a cell
   */
  public CellRef place(Setting setting) {
    return Optional.ofNullable(cells.get(setting))
        .or(() -> Optional.ofNullable(blanks.get(setting)))
        .orElse(CellRef.ofSheet("Settings"));
  }

  /**
   * Where a value stands that can't be used.
   *
   * @param setting the setting
   * @return its value cell; empty when its value can be used or nothing was given
   */
  public Optional<CellRef> unusable(Setting setting) {
    return Optional.ofNullable(cells.get(setting)).filter(at -> !isGiven(setting));
  }

  /**
   * The value in force as text.
   *
   * @param setting the setting
   * @return given value, else the machine's, else the default; empty for none
   */
  public String text(Setting setting) {
    String value = given.get(setting);
    if (value != null) {
      return value;
    }
    return machine.getOrDefault(setting, setting.blank());
  }

  /**
   * A number in force.
   *
   * @param setting a decimal or whole setting
   * @return its value; empty when neither given nor defaulted
   */
  public Optional<BigDecimal> findNumber(Setting setting) {
    String value = text(setting);
    return value.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(value));
  }

  /**
   * A number in force, nothing counting as zero.
   *
   * @param setting a decimal or whole setting
   * @return its value or zero
   */
  public BigDecimal number(Setting setting) {
    return findNumber(setting).orElse(BigDecimal.ZERO);
  }

  /**
   * A whole number in force.
   *
   * @param setting a whole setting that has a default
   * @return its value
   */
  public int whole(Setting setting) {
    return number(setting).intValueExact();
  }

  /**
   * Yes or no.
   *
   * @param setting a yes/no setting
   * @return true for yes; false for no and for a blank one without default
   */
  public boolean yes(Setting setting) {
    return text(setting).equals("yes");
  }

  /**
   * Where tax is rounded.
   *
   * @return the setting's choice
   */
  public TaxOn taxOn() {
    return TaxOn.of(text(Setting.TAX_ON));
  }

  /**
   * Whether income and cost are asked for by the money rather than by the bill.
   *
   * @return the setting's choice, whatever the book has sheets for
   */
  public boolean countsCash() {
    return text(Setting.TAX_BASIS).equals("cash");
  }

  /**
   * A date in force.
   *
   * @param setting a date setting
   * @return its value; empty when not given
   */
  public Optional<LocalDate> findDate(Setting setting) {
    String value = text(setting);
    return value.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(value));
  }

  /**
   * The currency's minor unit.
   *
   * @return decimals of the book's currency
   */
  public MinorUnit minorUnit() {
    return MinorUnit.of(currency());
  }

  /**
   * The book's currency.
   *
   * @return an ISO 4217 code; {@code USD} when neither the book nor the machine names one
   */
  public String currency() {
    String code = text(Setting.CURRENCY);
    return code.isEmpty() ? "USD" : code;
  }

  /**
   * Whether tax is charged and shown at all.
   *
   * @return false for regime {@code uk} without a tax number
   */
  public boolean chargesTax() {
    return !(text(Setting.TAX_REGIME).equals("uk") && text(Setting.TAX_NUMBER).isEmpty());
  }

  /**
   * Whether the business is registered for the tax that it charges.
   *
   * @return true with a tax number, where tax is charged at all
   */
  public boolean taxRegistered() {
    return chargesTax() && !text(Setting.TAX_NUMBER).isEmpty();
  }

  /**
   * Whether tax paid on purchases comes back.
   *
   * @return the setting; blank: with a tax number outside regime {@code us}
   */
  public boolean inputTaxRecovered() {
    if (isGiven(Setting.INPUT_TAX_RECOVERED)) {
      return yes(Setting.INPUT_TAX_RECOVERED);
    }
    return !text(Setting.TAX_NUMBER).isEmpty() && !text(Setting.TAX_REGIME).equals("us");
  }

  /**
   * Gas cost per kilogram, from whichever unit was given.
   *
   * @return per kilogram, to 34 figures; zero when not given
   */
  public BigDecimal gasCostPerKg() {
    if (isGiven(Setting.GAS_COST_KG)) {
      return number(Setting.GAS_COST_KG);
    }
    if (isGiven(Setting.GAS_COST_LB)) {
      return number(Setting.GAS_COST_LB).divide(KG_PER_LB, MathContext.DECIMAL128);
    }
    return number(Setting.GAS_COST_GALLON)
        .divide(LB_PER_GALLON.multiply(KG_PER_LB), MathContext.DECIMAL128);
  }

  /**
   * Whether any gas cost was given.
   *
   * @return false when gas counts as nothing for want of a cost
   */
  public boolean gasCostGiven() {
    return isGiven(Setting.GAS_COST_KG)
        || isGiven(Setting.GAS_COST_LB)
        || isGiven(Setting.GAS_COST_GALLON);
  }

  /**
   * Burn in kilograms an hour, from whichever unit was given.
   *
   * @return kilograms an hour
   */
  public BigDecimal gasBurnKgPerHour() {
    if (!isGiven(Setting.GAS_BURN_KG) && isGiven(Setting.GAS_BURN_LB)) {
      return number(Setting.GAS_BURN_LB).multiply(KG_PER_LB);
    }
    return number(Setting.GAS_BURN_KG);
  }
}

package clenchbook.tax.rates;

import clenchbook.texts.Message;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What the value of a rate row is counted in; the words stand in the unit column of the data files.
 */
public enum RateUnit {
  /** Money for one mile driven. */
  PER_MILE("per mile", true, Message.of("tax.unit.perMile")),
  /** Money for one kilometre driven. */
  PER_KM("per km", true, Message.of("tax.unit.perKm")),
  /** Hundredths: 92.35 means 0.9235. */
  PERCENT("percent", true, Message.of("tax.unit.percent")),
  /** An amount in the jurisdiction's currency. */
  MONEY("money", true, Message.of("tax.unit.money")),
  /** A number of miles. */
  MILES("miles", true, Message.of("tax.unit.miles")),
  /** A number of kilometres. */
  KM("km", true, Message.of("tax.unit.km")),
  /** A number of miles in an hour. */
  MILES_PER_HOUR("miles per hour", true, Message.of("tax.unit.milesPerHour")),
  /** A number of months. */
  MONTHS("months", true, Message.of("tax.unit.months")),
  /** A plain number: how many of something. */
  COUNT("count", true, Message.of("tax.unit.count")),
  /** The number of a line on a form, kept as text: {@code 24b}. */
  LINE("line", false, Message.of("tax.unit.line")),
  /** The number of a box on a form, kept as text: {@code 17}. */
  BOX("box", false, Message.of("tax.unit.box")),
  /** A day of the tax year's first calendar year, as {@code 04-15}. */
  DAY("day", false, Message.of("tax.unit.day")),
  /** A day of the calendar year after the one in which the tax year starts, as {@code 01-15}. */
  DAY_NEXT_YEAR("day next year", false, Message.of("tax.unit.dayNextYear")),
  /** One full date, as {@code 2026-04-16}. */
  DATE("date", false, Message.of("tax.unit.date")),
  /** A word that stands for another: the farrier's category for a line's code. */
  WORD("word", false, Message.of("tax.unit.word"));

  private final String text;
  private final boolean numeric;
  private final Message said;

  RateUnit(String text, boolean numeric, Message said) {
    this.text = text;
    this.numeric = numeric;
    this.said = said;
  }

  /** The unit as the data files write it. */
  public String text() {
    return text;
  }

  /** What pages say of it. */
  public Message said() {
    return said;
  }

  /** Whether the value is an exact decimal number rather than a name or a date. */
  public boolean isNumeric() {
    return numeric;
  }

  /**
   * The unit written as {@code text}, ignoring case and outer spaces; empty where there is none of
   * that name.
   */
  public static Optional<RateUnit> find(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(unit -> unit.text.equals(wanted)).findFirst();
  }
}

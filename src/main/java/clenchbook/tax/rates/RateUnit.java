package clenchbook.tax.rates;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What the value of a rate row is counted in; the words stand in the unit column of the data files.
 */
public enum RateUnit {
  /** Money for one mile driven. */
  PER_MILE("per mile", true),
  /** Money for one kilometre driven. */
  PER_KM("per km", true),
  /** Hundredths: 92.35 means 0.9235. */
  PERCENT("percent", true),
  /** An amount in the jurisdiction's currency. */
  MONEY("money", true),
  /** A number of miles. */
  MILES("miles", true),
  /** A number of kilometres. */
  KM("km", true),
  /** A number of miles in an hour. */
  MILES_PER_HOUR("miles per hour", true),
  /** A number of months. */
  MONTHS("months", true),
  /** A plain number: how many of something. */
  COUNT("count", true),
  /** The number of a line on a form, kept as text: {@code 24b}. */
  LINE("line", false),
  /** The number of a box on a form, kept as text: {@code 17}. */
  BOX("box", false),
  /** A day of the tax year's first calendar year, as {@code 04-15}. */
  DAY("day", false),
  /** A day of the calendar year after the one in which the tax year starts, as {@code 01-15}. */
  DAY_NEXT_YEAR("day next year", false),
  /** One full date, as {@code 2026-04-16}. */
  DATE("date", false),
  /** A word that stands for another: the farrier's category for a line's code. */
  WORD("word", false);

  private final String text;
  private final boolean numeric;

  RateUnit(String text, boolean numeric) {
    this.text = text;
    this.numeric = numeric;
  }

  /** The unit as the data files write it. */
  public String text() {
    return text;
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

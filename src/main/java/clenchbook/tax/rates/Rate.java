package clenchbook.tax.rates;

import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/**
 * One row of a rate table: a value in force from one day to another, both inclusive, and where it
 * comes from.
 *
 * @param table the table it stands in, as {@code us/mileage}
 * @param code what it is the rate of, in the table's own words; lower case
 * @param name the name to print
 * @param value the value as written; {@link #amount()} for numbers
 * @param unit what the value counts
 * @param from the first day it is in force
 * @param to the last day it is in force; never open, so that no table speaks beyond what was looked
 *     at
 * @param source the document it was taken from, or the words {@code from memory} within it; never
 *     blank
 * @param section the place in that document; may be blank
 * @param checked the day on which somebody compared it with its source; empty where nobody has
 * @param text the key of the text that pages say in place of the name, or of the value where that
 *     is a word; blank where they say it as it stands
 * @param overlaid whether the row comes from the farrier's or accountant's own file rather than the
 *     program's
 */
public record Rate(
    String table,
    String code,
    String name,
    String value,
    RateUnit unit,
    LocalDate from,
    LocalDate to,
    String source,
    String section,
    Optional<LocalDate> checked,
    String text,
    boolean overlaid) {

  /** The source of what nobody sets down. */
  private static final String PRACTICE = "common practice, no source";

  /** A row whose words stand for themselves in every language. */
  public Rate(
      String table,
      String code,
      String name,
      String value,
      RateUnit unit,
      LocalDate from,
      LocalDate to,
      String source,
      String section,
      Optional<LocalDate> checked,
      boolean overlaid) {
    this(table, code, name, value, unit, from, to, source, section, checked, "", overlaid);
  }

  /**
   * Refuses a blank code, value or source, an end before its beginning, and a value that its unit
   * cannot hold.
   */
  public Rate {
    refuseBlank(code, "code");
    refuseBlank(value, "value");
    refuseBlank(source, "source");
    if (to.isBefore(from)) {
      throw new UnusableRate(Message.of("tax.refused.ends", code, to, from));
    }
    refuseUnreadable(unit, value);
  }

  private static void refuseBlank(String text, String column) {
    if (text.isBlank()) {
      throw new UnusableRate(Message.of("tax.refused.empty", column));
    }
  }

  private static void refuseUnreadable(RateUnit unit, String value) {
    try {
      if (unit.isNumeric()) {
        refuseNegative(new BigDecimal(value), value);
      } else if (unit == RateUnit.DAY || unit == RateUnit.DAY_NEXT_YEAR) {
        MonthDay.parse("--" + value);
      } else if (unit == RateUnit.DATE) {
        LocalDate.parse(value);
      }
    } catch (NumberFormatException | DateTimeParseException unreadable) {
      throw new UnusableRate(Message.of("tax.refused.value", value, unit.said()));
    }
  }

  private static void refuseNegative(BigDecimal amount, String value) {
    if (amount.signum() < 0) {
      throw new UnusableRate(Message.of("tax.refused.negative", value));
    }
  }

  /**
   * The value as an exact decimal; throws {@link IllegalStateException} where the unit is a name or
   * a date.
   */
  public BigDecimal amount() {
    if (!unit.isNumeric()) {
      throw new IllegalStateException(
          table + " " + code + " is a " + unit.text() + ", not a number");
    }
    return new BigDecimal(value);
  }

  /** A percentage as a plain factor, exact: 92.35 percent is 0.9235. */
  public BigDecimal factor() {
    if (unit != RateUnit.PERCENT) {
      throw new IllegalStateException(table + " " + code + " is no percentage");
    }
    return amount().movePointLeft(2);
  }

  /**
   * The day this row names in the calendar year {@code year} (or the year after, for a day of the
   * next year).
   */
  public LocalDate dayIn(int year) {
    if (unit == RateUnit.DATE) {
      return LocalDate.parse(value);
    }
    return MonthDay.parse("--" + value).atYear(unit == RateUnit.DAY_NEXT_YEAR ? year + 1 : year);
  }

  /** Whether the row is in force on {@code day}. */
  public boolean covers(LocalDate day) {
    return !day.isBefore(from) && !day.isAfter(to);
  }

  /** The source, its section and how far it was checked, in one line, as files have it. */
  public String citation() {
    String standing = checked.map(day -> " (checked " + day + ")").orElse(" (not checked)");
    return place() + standing + (overlaid ? ", from your own rates file" : "");
  }

  private String place() {
    return section.isBlank() ? source : source + ", " + section;
  }

  /** The same for a page. */
  public Message cited() {
    Message place =
        source.equals(PRACTICE) && section.isBlank()
            ? Message.of("tax.source.practice")
            : Message.literal(place());
    Message cited =
        checked
            .map(day -> Message.of("tax.source.checked", place, day))
            .orElseGet(() -> Message.of("tax.source.notChecked", place));
    return overlaid ? Message.of("tax.source.own", cited) : cited;
  }

  /** What a page calls it: its text where it has one, else its name. */
  public Message said() {
    return text.isEmpty() || unit == RateUnit.WORD ? Message.literal(name) : Message.of(text);
  }

  /** What a page says for its value: where that is words, its text; else the value as written. */
  public Message saidValue() {
    return text.isEmpty() || unit != RateUnit.WORD ? Message.literal(value) : Message.of(text);
  }

  /** Whether its value is the program's own word for a line that no form numbers. */
  public boolean isUnnumbered() {
    return value.equals(code) && !text.isEmpty();
  }

  /** How far the row was compared with its source, as the source itself tells. */
  public Standing standing() {
    return Standing.of(source);
  }

  /** The same row cut to the days from {@code first} to {@code last}, both inclusive. */
  Rate within(LocalDate first, LocalDate last) {
    return new Rate(
        table, code, name, value, unit, first, last, source, section, checked, text, overlaid);
  }
}

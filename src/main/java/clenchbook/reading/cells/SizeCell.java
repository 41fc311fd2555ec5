package clenchbook.reading.cells;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.CellFormat;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sizes, which a spreadsheet loves to turn into something else: {@code 5/16} becomes the 16th of
 * May, {@code 00} the number 0, {@code 0: 2} two minutes past midnight.
 */
final class SizeCell {
  private static final Pattern DAY_AND_MONTH =
      Pattern.compile("(\\d{1,2})[-. ]{1,2}(\\p{L}{3,9})\\.?(?:[-. ]\\d{2,4})?");
  private static final Pattern MONTH_AND_YEAR = Pattern.compile("(\\p{L}{3,9})\\.?[-. ](\\d{2})");
  private static final Pattern ISO_DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
  private static final Pattern LITERAL_FORMAT =
      Pattern.compile("(0+|#)(?:\"(x0|/\\d{1,2})\"|\\\\?(x)\\\\?(0))");
  private static final List<Integer> SHOP_DENOMINATORS = List.of(2, 4, 8, 16, 32, 64);
  private static final int DAY_LENGTH_OF_PARTS = 24 * 3600;

  private SizeCell() {}

  /**
   * A size read.
   *
   * @param text the size; empty when it is lost
   * @param changed whether the spreadsheet had made something else of it
   */
  public record Reading(String text, boolean changed) {
    static final Reading LOST = new Reading("", true);

    private static Reading recovered(Optional<String> text) {
      return text.map(found -> new Reading(found, true)).orElse(LOST);
    }
  }

  /** Reads a size out of whatever stands in the cell. */
  static Reading read(Cell cell, boolean from1904) {
    if (cell instanceof Cell.Text text) {
      return ofText(text.text().strip());
    }
    if (cell instanceof Cell.Number number) {
      return ofNumber(number, from1904);
    }
    if (cell instanceof Cell.Moment moment) {
      return Reading.recovered(fraction(moment.at().toLocalDate(), moment.format().showsDay()));
    }
    return cell instanceof Cell.Span span ? Reading.recovered(sizeAndCount(span)) : Reading.LOST;
  }

  private static Reading ofText(String text) {
    Matcher day = DAY_AND_MONTH.matcher(text);
    if (day.matches()) {
      Optional<Integer> month = DateText.month(day.group(2));
      int number = Integer.parseInt(day.group(1));
      return month.isEmpty()
          ? new Reading(text, false)
          : Reading.recovered(properFraction(month.get(), number));
    }
    Matcher year = MONTH_AND_YEAR.matcher(text);
    if (year.matches()) {
      Optional<Integer> month = DateText.month(year.group(1));
      int number = Integer.parseInt(year.group(2));
      return month.isEmpty()
          ? new Reading(text, false)
          : Reading.recovered(properFraction(month.get(), number));
    }
    if (ISO_DAY.matcher(text).matches()) {
      return DateText.read(text, Optional.empty()).days().stream()
          .findFirst()
          .map(found -> Reading.recovered(fraction(found, true)))
          .orElse(Reading.LOST);
    }
    return new Reading(text, false);
  }

  private static Reading ofNumber(Cell.Number number, boolean from1904) {
    Optional<BigDecimal> value = number.decimal();
    if (value.isEmpty()) {
      return new Reading(number.shown(), false);
    }
    BigDecimal size = value.get();
    if (DayNumber.plausible(size)) {
      return Reading.recovered(fraction(DayNumber.day(size, from1904), true));
    }
    if (number.format().kind() == CellFormat.Kind.FRACTION) {
      return asFraction(size);
    }
    return byFormat(number.format().code(), size).orElse(new Reading(number.shown(), false));
  }

  /** The number 0 under the format 00, or 4 under the format 0"x0". */
  private static Optional<Reading> byFormat(String code, BigDecimal size) {
    if (size.signum() == 0 && code.matches("0{2,4}")) {
      return Optional.of(new Reading(code, true));
    }
    Matcher literal = LITERAL_FORMAT.matcher(code);
    if (!literal.matches() || size.scale() > 0) {
      return Optional.empty();
    }
    String after =
        literal.group(2) == null ? literal.group(3) + literal.group(4) : literal.group(2);
    return Optional.of(new Reading(size.toPlainString() + after, true));
  }

  private static Reading asFraction(BigDecimal size) {
    if (size.signum() <= 0 || size.scale() <= 0) {
      return new Reading(size.toPlainString(), false);
    }
    BigDecimal whole = size.setScale(0, RoundingMode.DOWN);
    BigDecimal rest = size.subtract(whole);
    for (int below : SHOP_DENOMINATORS) {
      BigDecimal above = rest.multiply(BigDecimal.valueOf(below));
      if (above.stripTrailingZeros().scale() <= 0) {
        String fraction = above.toBigInteger() + "/" + below;
        return new Reading(whole.signum() == 0 ? fraction : whole + " " + fraction, true);
      }
    }
    return new Reading(size.toPlainString(), false);
  }

  /**
   * The fraction that became a day. A size is a proper fraction, so that day and month can stand in
   * one order only; a month without a day stands before the two digits of its year.
   */
  private static Optional<String> fraction(LocalDate day, boolean showsDay) {
    return showsDay
        ? properFraction(day.getMonthValue(), day.getDayOfMonth())
        : properFraction(day.getMonthValue(), day.getYear() % 100);
  }

  private static Optional<String> properFraction(int one, int other) {
    int above = Math.min(one, other);
    int below = Math.max(one, other);
    return above > 0 && above < below ? Optional.of(above + "/" + below) : Optional.empty();
  }

  /** A size before a colon and the count after it became hours and minutes. */
  private static Optional<String> sizeAndCount(Cell.Span span) {
    long seconds = span.length().toSeconds();
    long count = seconds / 60 % 60;
    boolean plain = seconds >= 0 && seconds < DAY_LENGTH_OF_PARTS && seconds % 60 == 0;
    return plain && count >= 1 && count <= 8
        ? Optional.of(seconds / 3600 + ": " + count)
        : Optional.empty();
  }
}

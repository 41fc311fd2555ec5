package clenchbook.reading.cells;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths of time written as text: {@code 0:45}, {@code 45}, {@code 45 min}, {@code 1 h 15}, {@code
 * 1u10}, {@code 90 s}.
 */
public final class MinutesText {
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,4}):(\\d{1,2})(?::(\\d{1,2}))?");
  private static final Pattern HOURS =
      Pattern.compile(
          "([\\d.,]+)\\s*(?:h|u|hr|hrs|hour|hours|std|stunde|stunden|heure|heures|hora|horas|uur|uren)\\.?\\s*"
              + "(?:(\\d{1,2})\\s*(?:m|min|mins|minutes|minuten)?\\.?)?");

  private final NumberText numbers;
  private final MeasureText measures;

  MinutesText(NumberText numbers) {
    this.numbers = numbers;
    this.measures = new MeasureText(numbers);
  }

  /** The minutes, to the second where a clock form gives seconds; empty for anything else. */
  Optional<NumberText.Reading> read(String text) {
    String bare = text.strip().toLowerCase(Locale.ROOT);
    Matcher clock = CLOCK.matcher(bare);
    if (clock.matches()) {
      return clock(clock);
    }
    Matcher hours = HOURS.matcher(bare);
    if (hours.matches()) {
      BigDecimal more = BigDecimal.valueOf(part(hours.group(2)));
      return numbers
          .read(hours.group(1))
          .map(h -> new NumberText.Reading(ofHours(h.value()).add(more), h.otherMark()));
    }
    return measures.read(bare, Measure.MINUTE);
  }

  private static Optional<NumberText.Reading> clock(Matcher clock) {
    int minutes = part(clock.group(2));
    int seconds = part(clock.group(3));
    if (minutes > 59 || seconds > 59) {
      return Optional.empty();
    }
    // Some programs cut 0:48 to 0:47:59 when they save it as text: the binary share of a day falls
    // short of it.
    int whole = seconds == 59 ? 60 : seconds;
    long all = part(clock.group(1)) * 3600L + minutes * 60L + whole;
    return Optional.of(new NumberText.Reading(ofSeconds(all), false));
  }

  private static int part(String digits) {
    return digits == null ? 0 : Integer.parseInt(digits);
  }

  private static BigDecimal ofHours(BigDecimal hours) {
    return bare(hours.multiply(SIXTY));
  }

  private static BigDecimal bare(BigDecimal minutes) {
    BigDecimal bare = minutes.signum() == 0 ? BigDecimal.ZERO : minutes.stripTrailingZeros();
    return bare.scale() < 0 ? bare.setScale(0) : bare;
  }

  /** Seconds as minutes, to ten decimals half-up, without trailing zeros. */
  public static BigDecimal ofSeconds(long seconds) {
    return bare(BigDecimal.valueOf(seconds).divide(SIXTY, 10, RoundingMode.HALF_UP));
  }
}

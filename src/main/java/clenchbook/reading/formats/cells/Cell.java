package clenchbook.reading.formats.cells;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Optional;

/** One cell that holds something. Blank cells are not handed on. */
public sealed interface Cell {
  /** The most characters that a cell may hold; a longer text is cut. */
  int LONGEST_TEXT = 32_767;

  /** The column, 0 for A. */
  int column();

  /** Whether a formula made the value. */
  boolean formula();

  /** The value as a text for a message: near to what the spreadsheet shows, never empty. */
  String shown();

  /**
   * Words, as they stand in the file.
   *
   * @param cut whether the text was longer than a cell may hold and lost its end
   */
  record Text(int column, boolean formula, String text, boolean cut) implements Cell {
    @Override
    public String shown() {
      return text;
    }
  }

  /**
   * A number that is neither a date nor a time.
   *
   * @param raw the digits as they stand in the file, so that no binary rounding touches them
   */
  record Number(int column, boolean formula, String raw, CellFormat format) implements Cell {
    private static final MathContext SHOWN_DIGITS = new MathContext(15);
    private static final int LONGEST = 400;
    private static final int LARGEST_EXPONENT = 308;

    /**
     * The exact decimal that the spreadsheet shows: files hold binary fractions, such as
     * 85.10000000000001, of which 15 significant digits are true. Half-up at the fifteenth digit.
     *
     * @return the value without trailing zeros; empty where the digits are no number
     */
    public Optional<BigDecimal> decimal() {
      return decimalOf(raw);
    }

    static Optional<BigDecimal> decimalOf(String raw) {
      if (raw.length() > LONGEST) {
        return Optional.empty();
      }
      try {
        BigDecimal exact = new BigDecimal(raw).round(SHOWN_DIGITS);
        long exponent = (long) exact.precision() - exact.scale();
        if (exact.signum() == 0) {
          return Optional.of(BigDecimal.ZERO);
        }
        return Math.abs(exponent) > LARGEST_EXPONENT ? Optional.empty() : Optional.of(plain(exact));
      } catch (NumberFormatException | ArithmeticException notANumber) {
        return Optional.empty();
      }
    }

    private static BigDecimal plain(BigDecimal value) {
      BigDecimal bare = value.stripTrailingZeros();
      return bare.scale() < 0 ? bare.setScale(0) : bare;
    }

    @Override
    public String shown() {
      return decimal().map(BigDecimal::toPlainString).orElse(raw);
    }
  }

  /** A day, perhaps with a time of day. */
  record Moment(int column, boolean formula, LocalDateTime at, CellFormat format) implements Cell {
    @Override
    public String shown() {
      return at.toLocalTime().toSecondOfDay() == 0
          ? at.toLocalDate().toString()
          : at.toLocalDate() + " " + at.toLocalTime();
    }
  }

  /** A length of time, or a time of day: a spreadsheet keeps both alike. Whole seconds. */
  record Span(int column, boolean formula, Duration length) implements Cell {
    @Override
    public String shown() {
      long seconds = Math.abs(length.toSeconds());
      String sign = length.isNegative() ? "-" : "";
      String minutes = sign + seconds / 3600 + ":" + two(seconds / 60 % 60);
      return seconds % 60 == 0 ? minutes : minutes + ":" + two(seconds % 60);
    }

    private static String two(long number) {
      return number < 10 ? "0" + number : Long.toString(number);
    }
  }

  /** TRUE or FALSE. */
  record Truth(int column, boolean formula, boolean value) implements Cell {
    @Override
    public String shown() {
      return value ? "TRUE" : "FALSE";
    }
  }

  /** An error such as {@code #REF!}. */
  record Fault(int column, boolean formula, String code) implements Cell {
    @Override
    public String shown() {
      return code;
    }
  }

  /** A formula of which the file holds no result. */
  record NoValue(int column) implements Cell {
    @Override
    public boolean formula() {
      return true;
    }

    @Override
    public String shown() {
      return "(formula)";
    }
  }
}

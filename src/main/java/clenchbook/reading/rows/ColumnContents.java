package clenchbook.reading.rows;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.CellFormat;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Counts what the cells of a column look like: money, minutes, or neither. */
public final class ColumnContents {
  /** What a bill or an hour may hang on. */
  public enum Holds {
    /** Money. */
    MONEY,
    /** Minutes. */
    MINUTES,
    /** Numbers that may be money or minutes. */
    NUMBERS
  }

  private static final BigDecimal LEAST = BigDecimal.valueOf(5);
  private static final BigDecimal MOST = BigDecimal.valueOf(5_000);
  private static final BigDecimal FIRST_YEAR = BigDecimal.valueOf(1_900);
  private static final BigDecimal LAST_YEAR = BigDecimal.valueOf(2_100);
  private static final Pattern MONEY =
      Pattern.compile("[-+(]?\\s*\\p{Sc}\\s*[\\d.,' ]+\\)?|[\\d.,' ]+\\s*\\p{Sc}");
  private static final Pattern TIME =
      Pattern.compile(
          "(?i)\\d{1,2}:\\d{2}|[\\d.,]+\\s*(min|mins|minutes|minuten|minutos|h|hrs)\\.?");
  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d{1,6}(?:[.,]\\d{1,2})?");

  private int cells;
  private int money;
  private int minutes;
  private int numbers;
  private int likely;
  private int years;
  private int inTurn;
  private Optional<BigDecimal> before = Optional.empty();

  void take(Cell cell) {
    cells++;
    if (cell instanceof Cell.Number number) {
      money += showsMoney(number.format()) ? 1 : 0;
      number.decimal().ifPresent(this::number);
    } else if (cell instanceof Cell.Span) {
      minutes++;
    } else if (cell instanceof Cell.Text text && text.text().length() < 30) {
      words(text.text().strip());
    }
  }

  private static boolean showsMoney(CellFormat format) {
    return format
        .code()
        .codePoints()
        .anyMatch(c -> Character.getType(c) == Character.CURRENCY_SYMBOL);
  }

  private void words(String text) {
    if (MONEY.matcher(text).matches()) {
      money++;
    } else if (TIME.matcher(text).matches()) {
      minutes++;
    } else if (NUMBER.matcher(text).matches()) {
      number(new BigDecimal(text.replace(',', '.')));
    }
  }

  private void number(BigDecimal value) {
    numbers++;
    boolean whole = value.stripTrailingZeros().scale() <= 0;
    boolean year = whole && value.compareTo(FIRST_YEAR) >= 0 && value.compareTo(LAST_YEAR) <= 0;
    years += year ? 1 : 0;
    likely += value.compareTo(LEAST) >= 0 && value.compareTo(MOST) <= 0 ? 1 : 0;
    boolean next = before.filter(one -> one.add(BigDecimal.ONE).compareTo(value) == 0).isPresent();
    inTurn += next ? 1 : 0;
    before = Optional.of(value);
  }

  /**
   * What the column seems to hold that a bill or an hour hangs on.
   *
   * @return empty where it holds something else
   */
  public Optional<Holds> moneyOrMinutes() {
    if (cells == 0) {
      return Optional.empty();
    }
    if (money * 2 >= cells) {
      return Optional.of(Holds.MONEY);
    }
    if (minutes * 2 >= cells) {
      return Optional.of(Holds.MINUTES);
    }
    boolean counted = numbers > 2 && inTurn * 10 >= (numbers - 1) * 8;
    boolean mostly = numbers * 10 >= cells * 6 && likely * 10 >= numbers * 6;
    return mostly && !counted && years < numbers ? Optional.of(Holds.NUMBERS) : Optional.empty();
  }

  /** Whether what it holds is marked as money or minutes, and not only numbers. */
  public boolean marked() {
    return cells > 0 && (money * 2 >= cells || minutes * 2 >= cells);
  }
}

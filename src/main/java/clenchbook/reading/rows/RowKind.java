package clenchbook.reading.rows;

import clenchbook.reading.cells.WordCell;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.words.TotalsWords;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** Tells rows of data from rows that only look like some. */
final class RowKind {
  private static final List<String> NAMES = List.of("Owner", "Horse", "Work", "Item", "Supplier");
  private static final int FEWEST_NAMES = 2;

  private RowKind() {}

  /** Whether a cell holds nothing but spaces. */
  static boolean isBlank(Cell cell) {
    return cell instanceof Cell.Text text && WordCell.trimmed(text.text()).isEmpty();
  }

  /**
   * A row in which a word for a total stands, and no day or name beside it. Who is billed for which
   * horse or work is no total, whatever its notes say.
   *
   * @param isDay tells whether a number may be a day, since the month is known
   */
  static boolean isTotals(
      List<Cell> all, Map<String, Cell> known, String key, BooleanSupplier isDay) {
    Cell keyCell = known.get(key);
    boolean keyed =
        keyCell != null && !isTotalsWord(keyCell) && (!isNumber(keyCell) || isDay.getAsBoolean());
    return !keyed && !isNamed(known) && all.stream().anyMatch(RowKind::isTotalsWord);
  }

  private static boolean isNamed(Map<String, Cell> known) {
    long names =
        NAMES.stream()
            .map(known::get)
            .filter(cell -> cell instanceof Cell.Text && !isTotalsWord(cell))
            .count();
    return names >= FEWEST_NAMES;
  }

  private static boolean isTotalsWord(Cell cell) {
    if (!(cell instanceof Cell.Text text) || text.text().length() > 60) {
      return false;
    }
    return TotalsWords.says(text.text());
  }

  private static boolean isNumber(Cell cell) {
    return cell instanceof Cell.Number || cell instanceof Cell.Span;
  }

  /** Sums without a word: only numbers, and formulas among them or nothing else below. */
  static boolean isBareSums(Map<String, Cell> known, String key) {
    return !known.containsKey(key) && known.values().stream().allMatch(RowKind::isNumber);
  }

  /** A row of formulas filled down below the last entry: nothing but zeros and empty results. */
  static boolean isFilledDown(Map<String, Cell> known) {
    return known.values().stream().allMatch(RowKind::isEmptyResult);
  }

  private static boolean isEmptyResult(Cell cell) {
    if (!cell.formula()) {
      return false;
    }
    if (cell instanceof Cell.Number number) {
      return number.decimal().filter(value -> value.signum() == 0).isPresent();
    }
    if (cell instanceof Cell.Span span) {
      return span.length().equals(Duration.ZERO);
    }
    boolean falsehood = cell instanceof Cell.Truth truth && !truth.value();
    boolean dayNought = cell instanceof Cell.Moment moment && moment.at().getYear() < 1900;
    return falsehood || dayNought;
  }

  /** The headings once more, as on a second printed page. */
  static boolean isHeadingsAgain(Map<String, Cell> known, Map<String, String> headings) {
    return known.size() > 1
        && known.entrySet().stream()
            .allMatch(
                entry ->
                    entry.getValue() instanceof Cell.Text text
                        && text.text().equals(headings.get(entry.getKey())));
  }
}

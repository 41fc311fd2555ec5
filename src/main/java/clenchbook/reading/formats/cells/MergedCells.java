package clenchbook.reading.formats.cells;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A block of merged cells; only its first cell holds a value.
 *
 * @param firstRow from 1
 * @param lastRow from 1, at least {@code firstRow}
 * @param firstColumn from 0
 * @param lastColumn from 0, at least {@code firstColumn}
 */
public record MergedCells(int firstRow, int lastRow, int firstColumn, int lastColumn) {
  private static final Pattern BLOCK =
      Pattern.compile("\\$?([A-Za-z]{1,3})\\$?([0-9]{1,7}):\\$?([A-Za-z]{1,3})\\$?([0-9]{1,7})");

  /** Whether the block spans more than one row. */
  public boolean tall() {
    return lastRow > firstRow;
  }

  /** Reads a block such as {@code A2:B7}; empty for anything else. */
  public static Optional<MergedCells> parse(String block) {
    Matcher found = BLOCK.matcher(block);
    if (!found.matches()) {
      return Optional.empty();
    }
    int top = Integer.parseInt(found.group(2));
    int foot = Integer.parseInt(found.group(4));
    int left = ColumnLetters.column(found.group(1));
    int right = ColumnLetters.column(found.group(3));
    boolean ordered = top >= 1 && foot >= top && right >= left;
    return ordered ? Optional.of(new MergedCells(top, foot, left, right)) : Optional.empty();
  }
}

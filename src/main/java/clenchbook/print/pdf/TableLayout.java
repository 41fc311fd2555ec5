package clenchbook.print.pdf;

import clenchbook.print.fonts.Typefaces;
import clenchbook.reports.blocks.Block;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The columns of a table as they are laid out; tables of one layout share their bands.
 *
 * @param columns in order
 */
record TableLayout(List<Column> columns) {
  /** Nothing on paper is set smaller, and tables are set in it. */
  static final float LETTERS = 8;

  /** What stands beside a figure for its basis. */
  static final int MARK = 8;

  private static final int GUTTER = 6;

  /** A longer word of the book is broken rather than that it takes the others' room. */
  private static final int MOST_LETTERS = 16;

  TableLayout {
    columns = List.copyOf(columns);
  }

  /**
   * A column.
   *
   * @param weight its relative width
   * @param number true when set to the right
   * @param marked true when a figure in it bears the mark of its basis
   * @param word points that the longest word takes, of its heading and its cells
   */
  record Column(int weight, boolean number, boolean marked, int word) {
    private boolean like(Column other) {
      return weight == other.weight && number == other.number && marked == other.marked;
    }

    private Column with(Column other) {
      return new Column(weight, number, marked, Math.max(word, other.word));
    }
  }

  static TableLayout of(Block.Table table) {
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      int at = i;
      boolean marked =
          table.rows().stream().anyMatch(row -> row.cells().get(at).restsOn().isPresent());
      Block.Column column = table.columns().get(i);
      columns.add(new Column(column.weight(), column.number(), marked, word(table, i)));
    }
    return new TableLayout(columns);
  }

  /** Whether both can share their bands. */
  boolean like(TableLayout other) {
    return columns.size() == other.columns.size()
        && IntStream.range(0, columns.size())
            .allMatch(i -> columns.get(i).like(other.columns.get(i)));
  }

  /** One that has room for the words of both. */
  TableLayout with(TableLayout other) {
    return new TableLayout(
        IntStream.range(0, columns.size())
            .mapToObj(i -> columns.get(i).with(other.columns.get(i)))
            .toList());
  }

  private static int word(Block.Table table, int at) {
    Block.Column column = table.columns().get(at);
    Stream<String> cells =
        table.rows().stream()
            .filter(row -> !heads(row))
            .flatMap(row -> words(row.cells().get(at).text()))
            .filter(word -> column.number() || word.length() <= MOST_LETTERS)
            .max(Comparator.comparing(String::length))
            .stream();
    return Stream.concat(words(column.header()), cells)
        .mapToInt(TableLayout::points)
        .max()
        .orElse(0);
  }

  /** What is broken only where it is too long; a blank that may not break is part of a word. */
  private static Stream<String> words(String text) {
    return Arrays.stream(text.split(" "));
  }

  /** A row with nothing but its first words heads those below it, across all columns. */
  static boolean heads(Block.Row row) {
    return row.total()
        && row.cells().size() > 1
        && row.cells().stream().skip(1).allMatch(cell -> cell.text().isEmpty());
  }

  /** Headings and totals are bold. */
  private static int points(String text) {
    Font bold = Typefaces.text(LETTERS, true);
    FontRenderContext plain = new FontRenderContext(null, true, true);
    return (int) Math.ceil(bold.getStringBounds(text, plain).getWidth());
  }

  /** The air to the right of a column; words right after figures need more of it. */
  int gutter(int column) {
    if (column + 1 == columns.size()) {
      return 0;
    }
    boolean figuresThenWords = columns.get(column).number() && !columns.get(column + 1).number();
    return figuresThenWords ? 2 * GUTTER : GUTTER;
  }

  /** What lies to the right of a column's own words. */
  int beside(int column) {
    return gutter(column) + (columns.get(column).marked() ? MARK : 0);
  }

  /**
   * Where each column begins when all share a width, and at the end the width itself. A column too
   * narrow for a word gets what it needs from the others, so that no word is cut in two; where that
   * can't be, all keep their shares.
   */
  List<Integer> edges(int width) {
    double[] widths = widths(width);
    List<Integer> edges = new ArrayList<>(List.of(0));
    double before = 0;
    for (double each : widths) {
      before += each;
      edges.add((int) Math.round(before));
    }
    return edges;
  }

  private double[] widths(int width) {
    boolean[] fixed = new boolean[columns.size()];
    double[] widths = shares(width, fixed);
    while (fixOne(widths, fixed)) {
      if (all(fixed)) {
        return shares(width, new boolean[columns.size()]);
      }
      widths = shares(width, fixed);
    }
    return widths;
  }

  /** Gives the first that is too narrow what it needs; false where none is. */
  private boolean fixOne(double[] widths, boolean[] fixed) {
    for (int i = 0; i < widths.length; i++) {
      if (!fixed[i] && widths[i] < need(i)) {
        fixed[i] = true;
        return true;
      }
    }
    return false;
  }

  private static boolean all(boolean[] fixed) {
    for (boolean each : fixed) {
      if (!each) {
        return false;
      }
    }
    return true;
  }

  /** What each gets when some have what they need and the others share the rest. */
  private double[] shares(int width, boolean[] fixed) {
    double rest = width;
    int weights = 0;
    for (int i = 0; i < fixed.length; i++) {
      rest -= fixed[i] ? need(i) : 0;
      weights += fixed[i] ? 0 : columns.get(i).weight();
    }
    double[] shares = new double[fixed.length];
    for (int i = 0; i < fixed.length; i++) {
      shares[i] = fixed[i] ? need(i) : rest * columns.get(i).weight() / weights;
    }
    return shares;
  }

  private int need(int column) {
    return columns.get(column).word() + beside(column);
  }
}

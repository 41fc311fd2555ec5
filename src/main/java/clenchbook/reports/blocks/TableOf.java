package clenchbook.reports.blocks;

import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;

/**
 * A table of a report in the making: each column is named once, with its width and with what it
 * says of a thing, so that headings and cells can't part ways.
 *
 * @param <T> what a row is about
 */
public final class TableOf<T> {
  private final List<T> things;
  private final List<Block.Column> columns = new ArrayList<>();
  private final List<Function<? super T, Block.Cell>> cells = new ArrayList<>();
  private final List<Block.Row> totals = new ArrayList<>();
  private Predicate<? super T> isTotal = thing -> false;

  private TableOf(List<T> things) {
    this.things = List.copyOf(things);
  }

  /**
   * A table without columns yet.
   *
   * @param things what its rows are about, in order
   * @param <T> what a row is about
   * @return the table in the making
   */
  public static <T> TableOf<T> rows(List<T> things) {
    return new TableOf<>(things);
  }

  /**
   * Adds a column of words.
   *
   * @param header its heading
   * @param weight relative width
   * @param text what it says of a thing
   * @return this
   */
  public TableOf<T> words(String header, int weight, Function<? super T, String> text) {
    return column(Block.Column.words(header, weight), text.andThen(Block.Cell::of));
  }

  /**
   * Adds a column of numbers, written as they are to be read.
   *
   * @param header its heading
   * @param weight relative width
   * @param text the number as text; empty for none
   * @return this
   */
  public TableOf<T> number(String header, int weight, Function<? super T, String> text) {
    return column(Block.Column.number(header, weight), text.andThen(Block.Cell::of));
  }

  /**
   * Adds a column of counts.
   *
   * @param header its heading
   * @param weight relative width
   * @param count how many
   * @return this
   */
  public TableOf<T> count(String header, int weight, ToLongFunction<? super T> count) {
    return number(header, weight, thing -> Long.toString(count.applyAsLong(thing)));
  }

  /**
   * Adds a column of amounts, each with the digits it has.
   *
   * @param header its heading
   * @param weight relative width
   * @param amount the amount, rounded where it was made
   * @return this
   */
  public TableOf<T> amount(String header, int weight, Function<? super T, BigDecimal> amount) {
    return number(header, weight, amount.andThen(BigDecimal::toPlainString));
  }

  /**
   * Adds a column of figures that rest on something, which is said beside each.
   *
   * @param header its heading
   * @param weight relative width
   * @param text the figure as text
   * @param basis what it rests on
   * @return this
   */
  public TableOf<T> figure(
      String header,
      int weight,
      Function<? super T, String> text,
      Function<? super T, Basis> basis) {
    return cell(header, weight, thing -> Block.Cell.of(text.apply(thing), basis.apply(thing)));
  }

  /**
   * Adds a column of figures of which some may rest on nothing.
   *
   * @param header its heading
   * @param weight relative width
   * @param cell the figure with or without its basis
   * @return this
   */
  public TableOf<T> cell(String header, int weight, Function<? super T, Block.Cell> cell) {
    return column(Block.Column.number(header, weight), cell);
  }

  /**
   * Adds a column of figures that some things lack; those show a dash, and no basis.
   *
   * @param header its heading
   * @param weight relative width
   * @param text the figure as text; empty where there is none
   * @param basis what it rests on, where there is one
   * @return this
   */
  public TableOf<T> figureOrDash(
      String header,
      int weight,
      Function<? super T, Optional<String>> text,
      Function<? super T, Basis> basis) {
    return cell(
        header,
        weight,
        thing ->
            text.apply(thing)
                .map(found -> Block.Cell.of(found, basis.apply(thing)))
                .orElse(Block.Cell.of("–")));
  }

  /**
   * Adds a column of words that lead to files.
   *
   * @param header its heading
   * @param weight relative width
   * @param cell the words with or without a link
   * @return this
   */
  public TableOf<T> linked(String header, int weight, Function<? super T, Block.Cell> cell) {
    return column(Block.Column.words(header, weight), cell);
  }

  private TableOf<T> column(Block.Column column, Function<? super T, Block.Cell> cell) {
    columns.add(column);
    cells.add(cell);
    return this;
  }

  /**
   * Sets apart, as totals, the rows of some of the things.
   *
   * @param which true for a thing that is a total of others
   * @return this
   */
  public TableOf<T> totalsWhere(Predicate<? super T> which) {
    isTotal = which;
    return this;
  }

  /**
   * Closes the table with a total in words of its own.
   *
   * @param texts the cells, one a column
   * @return this
   */
  public TableOf<T> total(String... texts) {
    totals.add(Block.Row.total(texts));
    return this;
  }

  /**
   * Closes the table with a total made like its rows; call it when the columns stand.
   *
   * @param name what stands in the first column instead of the thing's own words
   * @param whole what the total is about
   * @return this
   */
  public TableOf<T> total(String name, T whole) {
    List<Block.Cell> row = new ArrayList<>(cells(whole));
    row.set(0, Block.Cell.of(name));
    totals.add(new Block.Row(row, true));
    return this;
  }

  /**
   * The table, with a line above it.
   *
   * @param caption what the table shows
   * @return the table
   */
  public Block.Table captioned(String caption) {
    List<Block.Row> rows = new ArrayList<>();
    things.forEach(thing -> rows.add(new Block.Row(cells(thing), isTotal.test(thing))));
    rows.addAll(totals);
    return new Block.Table(caption, columns, rows);
  }

  /**
   * The table under a heading that says it all.
   *
   * @return the table, without a caption
   */
  public Block.Table plain() {
    return captioned("");
  }

  private List<Block.Cell> cells(T thing) {
    return cells.stream().map(cell -> cell.apply(thing)).toList();
  }
}

package clenchbook.reports.blocks;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToLongFunction;

/**
 * A table of figures in the making: each column is named once, with what it says of a thing, so
 * that headings and cells can't part ways. A new column is one line.
 *
 * @param <T> what a row is about
 */
public final class FiguresOf<T> {
  private final List<T> things;
  private final List<String> names = new ArrayList<>();
  private final List<Function<? super T, String>> cells = new ArrayList<>();

  private FiguresOf(List<T> things) {
    this.things = List.copyOf(things);
  }

  /**
   * A table without columns yet.
   *
   * @param things what its rows are about, in order
   * @param <T> what a row is about
   * @return the table in the making
   */
  public static <T> FiguresOf<T> rows(List<T> things) {
    return new FiguresOf<>(things);
  }

  /**
   * Adds a column.
   *
   * @param name the column's name in the file
   * @param cell what it says of a thing, as it stands in the file; empty for none
   * @return this
   */
  public FiguresOf<T> column(String name, Function<? super T, String> cell) {
    names.add(name);
    cells.add(cell);
    return this;
  }

  /**
   * Adds a column of whole numbers.
   *
   * @param name the column's name in the file
   * @param count how many
   * @return this
   */
  public FiguresOf<T> count(String name, ToLongFunction<? super T> count) {
    return column(name, thing -> Long.toString(count.applyAsLong(thing)));
  }

  /**
   * Adds a column of amounts, each with the digits it has.
   *
   * @param name the column's name in the file
   * @param amount the amount, rounded where it was made
   * @return this
   */
  public FiguresOf<T> amount(String name, Function<? super T, BigDecimal> amount) {
    return column(name, amount.andThen(BigDecimal::toPlainString));
  }

  /**
   * Adds a column of amounts that some things lack.
   *
   * @param name the column's name in the file
   * @param amount the amount, rounded where it was made; empty for none
   * @return this
   */
  public FiguresOf<T> amountIfAny(String name, Function<? super T, Optional<BigDecimal>> amount) {
    return column(name, amount.andThen(any -> any.map(BigDecimal::toPlainString).orElse("")));
  }

  /**
   * The table.
   *
   * @param file the file's name without extension; may hold a folder
   * @return one row for each thing, in the order given
   */
  public FigureTable named(String file) {
    return new FigureTable(
        file,
        names,
        things.stream()
            .map(thing -> cells.stream().map(cell -> cell.apply(thing)).toList())
            .toList());
  }
}

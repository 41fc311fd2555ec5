package clenchbook.tax.jurisdiction;

import clenchbook.texts.Message;
import clenchbook.values.Period;
import java.util.ArrayList;
import java.util.List;

/**
 * How a regime looks at the quarters of its year.
 *
 * @param table the name of the table
 * @param title the heading over it
 * @param cumulative whether each quarter's figures run from the year's first day
 * @param due the day on which something falls due with each quarter, as text, four of them; blank
 *     where nothing does
 */
public record Quarters(String table, Message title, boolean cumulative, List<String> due) {
  /** Each quarter by itself, with nothing due. */
  public static final Quarters APART =
      new Quarters("quarters", Message.of("tax.quarters"), false, List.of("", "", "", ""));

  /** Refuses anything but four days. */
  public Quarters {
    due = List.copyOf(due);
    if (due.size() != 4) {
      throw new IllegalArgumentException(due.size() + " quarters");
    }
  }

  /**
   * A row of a table by quarter, whose first columns are {@code quarter,from,to,due}.
   *
   * @param quarter 1 to 4
   * @param period its days
   * @param due the day on which something falls due with it; blank for none
   * @param cells the cells behind
   */
  public static List<String> row(int quarter, Period period, String due, List<String> cells) {
    List<String> row = new ArrayList<>();
    row.add(String.valueOf(quarter));
    row.add(period.first().toString());
    row.add(period.last().toString());
    row.add(due);
    row.addAll(cells);
    return List.copyOf(row);
  }
}

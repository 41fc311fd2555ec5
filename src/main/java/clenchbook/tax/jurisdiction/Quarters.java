package clenchbook.tax.jurisdiction;

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
public record Quarters(String table, String title, boolean cumulative, List<String> due) {
  /** Each quarter by itself, with nothing due. */
  public static final Quarters APART =
      new Quarters("quarters", "By quarter", false, List.of("", "", "", ""));

  /** Refuses anything but four days. */
  public Quarters {
    due = List.copyOf(due);
    if (due.size() != 4) {
      throw new IllegalArgumentException(due.size() + " quarters");
    }
  }
}

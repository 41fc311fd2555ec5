package clenchbook.tax.expenses;

import clenchbook.book.Book;
import clenchbook.book.Purchase;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.year.TaxBasis;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The costs of a period, row by row, with the farrier's words mapped to the regime's lines.
 *
 * @param items what counts, by line code; vehicle rows stand under {@code vehicle}, because they
 *     count only where the actual cost is used
 * @param left rows that count on no line, by why: {@code private}, {@code asset}, {@code tax paid
 *     over}, {@code not allowed} and what the country's rules leave out
 * @param mapping each word the farrier used, and where it led
 * @param vehicleRows the purchases for a vehicle, whichever way it is counted in the end
 * @param withoutPaidOn how many purchases had no Paid on and were taken as paid on their date
 */
public record Expenses(
    List<LineItem> items,
    List<LineItem> left,
    List<Mapped> mapping,
    List<LineItem> vehicleRows,
    int withoutPaidOn) {
  public static final String GOODS = "goods bought";
  public static final String VEHICLE = "vehicle";
  public static final String PARKING = "parking and tolls";

  /** What stands for a blank Category. */
  public static final String NO_WORD = "(none)";

  /** Codes of rows that count on no line in any country. */
  public static final List<String> NEVER =
      List.of("private", "asset", "tax paid over", "not allowed");

  /**
   * One of the farrier's words for an expense.
   *
   * @param word as written; {@link #NO_WORD} where the cell is blank
   * @param by the known word it was found by
   * @param code the code it led to
   * @param rows how many rows
   * @param amount what they come to, before any share
   */
  public record Mapped(String word, String by, String code, int rows, BigDecimal amount) {
    Mapped plus(BigDecimal more) {
      return new Mapped(word, by, code, rows + 1, amount.add(more));
    }
  }

  /**
   * The costs of a period.
   *
   * @param book the book
   * @param period the days
   * @param basis by the day paid or the day bought
   * @param recovered whether the tax within a purchase comes back and is no cost
   * @param categories where the farrier's words lead
   * @param rules the country's rules for single codes, by code
   */
  public static Expenses of(
      Book book,
      Period period,
      TaxBasis basis,
      boolean recovered,
      CategoryMap categories,
      Map<String, CostRule> rules) {
    Count count = new Count(book, basis, recovered, categories, rules);
    book.purchases().stream()
        .filter(purchase -> period.holds(count.day(purchase)))
        .forEach(count::count);
    return count.expenses();
  }

  /** One calculation; mutable while it runs. */
  private static final class Count {
    private final MinorUnit unit;
    private final boolean recovered;
    private final TaxBasis basis;
    private final CategoryMap categories;
    private final Map<String, CostRule> rules;
    private final List<LineItem> items = new ArrayList<>();
    private final List<LineItem> left = new ArrayList<>();
    private final List<LineItem> vehicle = new ArrayList<>();
    private final TreeMap<String, Mapped> mapping = new TreeMap<>();
    private int withoutPaidOn;

    Count(
        Book book,
        TaxBasis basis,
        boolean recovered,
        CategoryMap categories,
        Map<String, CostRule> rules) {
      this.unit = book.settings().minorUnit();
      this.recovered = recovered;
      this.basis = basis;
      this.categories = categories;
      this.rules = rules;
    }

    Expenses expenses() {
      return new Expenses(
          List.copyOf(items),
          List.copyOf(left),
          List.copyOf(mapping.values()),
          List.copyOf(vehicle),
          withoutPaidOn);
    }

    LocalDate day(Purchase purchase) {
      return basis.cashCost() ? purchase.paidOn().orElse(purchase.date()) : purchase.date();
    }

    void count(Purchase purchase) {
      if (purchase.paidOn().isEmpty()) {
        withoutPaidOn++;
      }
      if (!purchase.item().isEmpty()) {
        items.add(item(purchase, GOODS));
        return;
      }
      CategoryMap.Found found = categories.find(purchase.category());
      String word = purchase.category().isBlank() ? NO_WORD : purchase.category();
      LineItem item = item(purchase, found.code());
      mapping.merge(
          word,
          new Mapped(word, found.by(), found.code(), 1, item.net()),
          (before, unused) -> before.plus(item.net()));
      place(item);
    }

    private void place(LineItem item) {
      CostRule rule = rules.get(item.code());
      if (rule != null) {
        rule.counted(item).ifPresent(items::add);
        rule.left(item).ifPresent(left::add);
      } else if (NEVER.contains(item.code())) {
        left.add(item);
      } else if (item.code().equals(VEHICLE)) {
        vehicle.add(item);
      } else {
        items.add(item);
      }
    }

    private LineItem item(Purchase purchase, String code) {
      BigDecimal gross = unit.round(purchase.grossAmount());
      BigDecimal net = recovered ? unit.round(purchase.netAmount()) : gross;
      String who = purchase.supplier().isEmpty() ? what(purchase) : purchase.supplier();
      return new LineItem(
          code,
          purchase.source().sheet(),
          purchase.source().row(),
          day(purchase),
          who,
          net,
          gross.subtract(net),
          gross);
    }

    private static String what(Purchase purchase) {
      return purchase.item().isEmpty() ? purchase.category() : purchase.item();
    }
  }
}

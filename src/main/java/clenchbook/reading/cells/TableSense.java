package clenchbook.reading.cells;

import clenchbook.texts.Message;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * What the cells of one table say of each other: the month of days that are numbers alone, and the
 * order of day and month in each column. The order is gathered while the table is read; one that
 * settles days that were not readable calls for reading the table once more.
 */
public final class TableSense {
  /** So many different days that can be read one way only settle a column. */
  private static final int ENOUGH = 3;

  private static final int MOST_KEPT = 1_000;

  private Supplier<Optional<YearMonth>> month;
  private final Map<String, DateText.Order> settled;
  private final Map<String, Witnesses> witnesses = new HashMap<>();

  /** What the days of one column say. */
  private static final class Witnesses {
    private final Map<DateText.Order, Set<LocalDate>> days = new EnumMap<>(DateText.Order.class);
    private boolean ambiguous;

    private int count(DateText.Order order) {
      return days.getOrDefault(order, Set.of()).size();
    }

    private Optional<DateText.Order> order() {
      int dayFirst = count(DateText.Order.DMY);
      int monthFirst = count(DateText.Order.MDY);
      if (dayFirst >= ENOUGH && monthFirst == 0) {
        return Optional.of(DateText.Order.DMY);
      }
      return monthFirst >= ENOUGH && dayFirst == 0
          ? Optional.of(DateText.Order.MDY)
          : Optional.empty();
    }
  }

  /**
   * The sense of a table.
   *
   * @param month of days that are numbers alone; empty where nothing gives it
   * @param settled the order of each column that was found to have one
   */
  public TableSense(Supplier<Optional<YearMonth>> month, Map<String, DateText.Order> settled) {
    this.month = month;
    this.settled = Map.copyOf(settled);
  }

  /** A table whose rows say nothing of each other. */
  public static TableSense none() {
    return new TableSense(Optional::empty, Map.of());
  }

  /** The month that days which are numbers alone belong to; empty where nothing gives it. */
  public Optional<YearMonth> month() {
    return month.get();
  }

  /** Lets another month count for the rows to come, or none. */
  public void turnTo(Optional<YearMonth> next) {
    month = () -> next;
  }

  Optional<DateText.Order> order(String heading) {
    return Optional.ofNullable(settled.get(heading));
  }

  /** Takes note of a text that is a day under a heading. */
  void witness(String heading, String text, DateText.Reading reading) {
    Witnesses own = witnesses.computeIfAbsent(heading, unused -> new Witnesses());
    own.ambiguous |= reading.days().size() > 1;
    DateText.onlyOrder(text)
        .ifPresent(
            order -> {
              Set<LocalDate> days = own.days.computeIfAbsent(order, unused -> new HashSet<>());
              if (days.size() < MOST_KEPT) {
                days.addAll(reading.days());
              }
            });
  }

  /** The columns whose own days settle an order that some of their days need. */
  public Map<String, DateText.Order> newlySettled() {
    Map<String, DateText.Order> found = new HashMap<>();
    witnesses.forEach(
        (heading, own) -> {
          if (own.ambiguous && !settled.containsKey(heading)) {
            own.order().ifPresent(order -> found.put(heading, order));
          }
        });
    return found;
  }

  /** Everything settled by now. */
  public Map<String, DateText.Order> settled() {
    return settled;
  }

  /** What settled the order of a column; empty where nothing did. */
  public Message why(String heading) {
    DateText.Order order = settled.get(heading);
    if (order == null) {
      return Message.NONE;
    }
    int days = Optional.ofNullable(witnesses.get(heading)).map(own -> own.count(order)).orElse(0);
    return order == DateText.Order.DMY
        ? Message.of("cells.order.dayFirst", days)
        : Message.of("cells.order.monthFirst", days);
  }
}

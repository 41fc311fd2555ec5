package clenchbook.stock;

import clenchbook.book.Names;
import clenchbook.book.Settings;
import clenchbook.jobs.Jobs;
import clenchbook.schedule.due.DueDates;
import clenchbook.schedule.due.DueHorse;
import clenchbook.stock.bar.BarNeed;
import clenchbook.stock.bar.BarPlan;
import clenchbook.stock.ledger.ShelfMonth;
import clenchbook.stock.ledger.ShelfMonth.Worth;
import clenchbook.stock.ledger.StockMovement;
import clenchbook.stock.ledger.StockMovements;
import clenchbook.stock.orders.StockLine;
import clenchbook.stock.orders.StockLines;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * All that is known of a month's stock.
 *
 * @param month the month
 * @param settings the settings in force
 * @param intervalDays the usual days from shoeing to shoeing: the median of the horses expected
 * @param lines one a shelf, by item and size
 * @param gas the month and the twelve months that end with it
 * @param bars one a bar that the next month's handmade shoes need
 * @param nextEnd the last day of the period the bars are for
 */
public record StockMonth(
    YearMonth month,
    Settings settings,
    int intervalDays,
    List<StockLine> lines,
    List<GasMonth> gas,
    List<BarPlan> bars,
    LocalDate nextEnd) {

  private static final int SIX_WEEKS = 42;

  /** Copies the lists. */
  public StockMonth {
    lines = List.copyOf(lines);
    gas = List.copyOf(gas);
    bars = List.copyOf(bars);
  }

  /**
   * Works a month out.
   *
   * @param due the due list as at the month's last day
   */
  public static StockMonth of(Jobs jobs, DueDates due, YearMonth month) {
    LocalDate end = month.atEndOfMonth();
    int intervalDays = interval(due);
    List<StockMovement> movements = StockMovements.upTo(jobs, end);
    LocalDate nextEnd = month.plusMonths(1).atEndOfMonth();
    return new StockMonth(
        month,
        jobs.index().book().settings(),
        intervalDays,
        StockLines.of(jobs, movements, month, intervalDays),
        List.of(
            GasMonth.of(jobs, month.toString(), month.atDay(1), end),
            GasMonth.ofTwelve(jobs, month)),
        BarPlan.all(BarNeed.of(jobs, due, nextEnd)),
        nextEnd);
  }

  private static int interval(DueDates due) {
    List<Integer> days =
        due.expected().stream().map(DueHorse::interval).map(i -> i.days()).sorted().toList();
    return days.isEmpty() ? SIX_WEEKS : days.get((days.size() - 1) / 2);
  }

  /** Gives what all shelves together were worth by one method: the sum of the lines. */
  public Worth total(Function<ShelfMonth, Worth> method) {
    BigDecimal zero = settings.minorUnit().zero();
    return lines.stream()
        .map(StockLine::month)
        .map(method)
        .reduce(Worth.nothing(zero), Worth::plus);
  }

  /** Gives what all orders together will cost: the sum of the lines. */
  public BigDecimal orderCost() {
    return orders().stream()
        .map(StockLine::orderCost)
        .reduce(settings.minorUnit().zero(), BigDecimal::add);
  }

  /** Gives the lines with something to order, by supplier, then item and size. */
  public List<StockLine> orders() {
    return lines.stream()
        .filter(line -> line.order().signum() > 0)
        .sorted(
            Comparator.comparing((StockLine line) -> Names.key(line.supplier()))
                .thenComparing(line -> line.month().shelf()))
        .toList();
  }
}

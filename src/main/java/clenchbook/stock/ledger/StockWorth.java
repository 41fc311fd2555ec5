package clenchbook.stock.ledger;

import clenchbook.jobs.Jobs;
import clenchbook.stock.ledger.StockMovement.CountedUp;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;

/**
 * What all stock cost on the evening of a day, by moving average.
 *
 * @param amount the sum over all shelves, each rounded to the minor unit
 * @param counted whether any Counts up to that day stand behind it
 */
public record StockWorth(BigDecimal amount, boolean counted) {

  /** Plays every movement up to and with {@code day}; nothing after it counts. */
  public static StockWorth on(Jobs jobs, LocalDate day) {
    MinorUnit unit = jobs.index().book().settings().minorUnit();
    List<StockMovement> movements = StockMovements.upTo(jobs, day);
    BigDecimal amount =
        StockReplay.month(movements, List.of(), YearMonth.from(day), unit).stream()
            .map(shelf -> shelf.average().closing())
            .reduce(unit.zero(), BigDecimal::add);
    boolean counted = movements.stream().anyMatch(CountedUp.class::isInstance);
    return new StockWorth(amount, counted);
  }
}

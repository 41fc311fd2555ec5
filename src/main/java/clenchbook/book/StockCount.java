package clenchbook.book;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * One row of Counts: what was found on the shelf at the end of a day.
 *
 * @param source the row it was read from
 * @param date the day counted
 * @param item the item
 * @param size its size
 * @param quantity pieces found; a bar in its Unit
 */
public record StockCount(
    SourceRow source, LocalDate date, String item, String size, BigDecimal quantity) {}

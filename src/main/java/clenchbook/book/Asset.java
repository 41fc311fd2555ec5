package clenchbook.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One row of Assets.
 *
 * @param source the row it was read from
 * @param name what was bought
 * @param bought the day bought
 * @param cost what it cost
 * @param assetClass the class, as the farrier or preparer names it
 * @param businessUsePercent business use in per cent; empty = 100
 * @param sold the day sold
 * @param proceeds what it brought
 */
public record Asset(
    SourceRow source,
    String name,
    LocalDate bought,
    Optional<BigDecimal> cost,
    String assetClass,
    Optional<BigDecimal> businessUsePercent,
    Optional<LocalDate> sold,
    Optional<BigDecimal> proceeds) {}

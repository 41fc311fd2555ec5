package clenchbook.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One row of Tax: a code and its rate from a date on.
 *
 * @param source the row it was read from
 * @param code the code used in Work
 * @param name the name printed
 * @param ratePercent the rate in per cent
 * @param kind what kind of rate it is
 * @param from first day in force; empty = always
 * @param reason why no tax is charged, in words or as a code; empty = none given
 */
public record TaxRate(
    SourceRow source,
    String code,
    String name,
    BigDecimal ratePercent,
    TaxKind kind,
    Optional<LocalDate> from,
    String reason) {}

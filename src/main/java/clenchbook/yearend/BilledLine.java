package clenchbook.yearend;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One line of something billed.
 *
 * @param sheet the sheet of the visit it stands for
 * @param row the visit's row
 * @param day the visit's day
 * @param what what was done, and on which horse
 * @param part {@code goods} or {@code services} where the Work splits them, else empty
 * @param taxCode its tax code; empty for a line without tax
 * @param ratePercent the code's rate; empty without a code
 * @param net its net in the minor unit
 * @param tax its part of the invoice's tax, split by largest remainder so that the parts add to the
 *     whole
 */
public record BilledLine(
    String sheet,
    int row,
    LocalDate day,
    String what,
    String part,
    String taxCode,
    Optional<BigDecimal> ratePercent,
    BigDecimal net,
    BigDecimal tax) {}

package clenchbook.tax.billed;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * One line of something billed.
 *
 * @param sheet the sheet of the visit it stands for
 * @param row the visit's row now; the row it had when billed where it is gone
 * @param day the visit's day
 * @param part {@code goods} or {@code services} where the Work splits them, else empty
 * @param taxCode its tax code; empty for a line without tax
 * @param ratePercent the code's rate; zero without a code
 * @param net its net in the minor unit
 * @param tax its part of the bill's tax, split by largest remainder so that the parts add to the
 *     whole
 */
public record BilledLine(
    String sheet,
    int row,
    LocalDate day,
    String part,
    String taxCode,
    BigDecimal ratePercent,
    BigDecimal net,
    BigDecimal tax) {}

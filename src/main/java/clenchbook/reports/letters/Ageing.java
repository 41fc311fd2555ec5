package clenchbook.reports.letters;

import java.math.BigDecimal;

/**
 * How old a balance is, by days past due.
 *
 * @param current not yet due, less any credit
 * @param pastDue1To30 1 to 30 days past due
 * @param pastDue31To60 31 to 60 days past due
 * @param pastDueOver60 more than 60 days past due
 */
public record Ageing(
    BigDecimal current,
    BigDecimal pastDue1To30,
    BigDecimal pastDue31To60,
    BigDecimal pastDueOver60) {}

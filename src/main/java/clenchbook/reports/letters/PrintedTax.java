package clenchbook.reports.letters;

import java.math.BigDecimal;

/**
 * The tax of one code.
 *
 * @param code the code that the lines bear
 * @param name the tax's name from the book
 * @param ratePercent the rate in percent; 0 for zero-rated, exempt and outside scope
 * @param net what it is charged on
 * @param tax what it comes to
 */
public record PrintedTax(
    String code, String name, BigDecimal ratePercent, BigDecimal net, BigDecimal tax) {}

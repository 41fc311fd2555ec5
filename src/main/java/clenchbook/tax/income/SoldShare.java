package clenchbook.tax.income;

import java.math.BigDecimal;

/**
 * What a receipt gives to work of one tax code, or takes back from it.
 *
 * @param sold the work
 * @param net the part that is no tax, in the minor unit
 * @param tax the part that is tax
 */
public record SoldShare(Sold sold, BigDecimal net, BigDecimal tax) {}

package clenchbook.billing.documents;

import java.math.BigDecimal;

/**
 * The tax of one code and rate on a document.
 *
 * @param code the code; empty for what bears no tax
 * @param name the name printed
 * @param ratePercent the rate, in per cent
 * @param net the net it is charged on
 * @param tax the tax; zero for an exempt owner
 */
public record TaxTotal(
    String code, String name, BigDecimal ratePercent, BigDecimal net, BigDecimal tax) {}

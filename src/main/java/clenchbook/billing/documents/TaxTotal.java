package clenchbook.billing.documents;

import clenchbook.book.TaxCategory;
import java.math.BigDecimal;

/**
 * The tax of one code and rate on a document.
 *
 * @param code the code; empty for what bears no tax
 * @param name the name printed
 * @param ratePercent the rate charged, in per cent; zero for an exempt owner
 * @param net the net it is charged on
 * @param tax the tax; zero for an exempt owner
 * @param category how it is treated
 * @param reason why no tax is charged, in words or as a code, as the book gives it; empty where tax
 *     is charged or nothing is said
 */
public record TaxTotal(
    String code,
    String name,
    BigDecimal ratePercent,
    BigDecimal net,
    BigDecimal tax,
    TaxCategory category,
    String reason) {}

package clenchbook.einvoice;

import clenchbook.book.TaxCategory;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The tax of one category and rate: BG-23.
 *
 * @param category BT-118
 * @param ratePercent BT-119; zero where no tax is charged
 * @param net BT-116: the sum of its lines
 * @param tax BT-117: as the register holds it
 * @param reason BT-120: why no tax is charged, in words; empty where tax is charged
 * @param reasonCode BT-121: why no tax is charged, as a code of the VATEX list
 */
public record TaxBreakdown(
    TaxCategory category,
    BigDecimal ratePercent,
    BigDecimal net,
    BigDecimal tax,
    Optional<String> reason,
    Optional<String> reasonCode) {}

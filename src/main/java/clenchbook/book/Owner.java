package clenchbook.book;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One row of Owners.
 *
 * @param source the row it was read from
 * @param name the name used in visits
 * @param invoiceName the name on the invoice; empty = name
 * @param address the address, lines separated by newlines
 * @param email the e-mail address; empty = none
 * @param termsDays days to pay; empty = the setting
 * @param taxExempt pays the net
 * @param taxNumber their tax number
 * @param country their country; empty = the book's
 * @param language their language; empty = the book's
 * @param discountPercent per cent off list prices and extras, 0 to 100
 * @param openingBalance what they owed at the opening date; negative = in credit
 */
public record Owner(
    SourceRow source,
    String name,
    String invoiceName,
    String address,
    String email,
    Optional<Integer> termsDays,
    boolean taxExempt,
    String taxNumber,
    String country,
    String language,
    Optional<BigDecimal> discountPercent,
    Optional<BigDecimal> openingBalance) {}

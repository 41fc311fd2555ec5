package clenchbook.book;

import clenchbook.book.einvoice.EInvoiceWish;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One row of Owners.
 *
 * @param source the row it was read from
 * @param name the name used in visits
 * @param invoiceName the name on the invoice; empty = name
 * @param address the address, lines separated by newlines
 * @param postcode the postcode; empty where the sheet gives none apart from the address
 * @param city the city; empty where the sheet gives none apart from the address
 * @param email the e-mail address; empty = none
 * @param termsDays days to pay; empty = the setting
 * @param taxExempt pays the net
 * @param exemptReason the ground of their exemption, in words or as a code; empty = none given
 * @param taxNumber their tax number
 * @param country their country, ISO 3166 alpha-2; empty = the book's
 * @param language their language; empty = the book's
 * @param discountPercent per cent off list prices and extras, 0 to 100
 * @param openingBalance what they owed at the opening date; negative = in credit
 * @param eInvoice which structured invoices they get, and where
 * @param formerly earlier names, whose invoices, payments and balance are this owner's; no blanks
 */
public record Owner(
    SourceRow source,
    String name,
    String invoiceName,
    String address,
    String postcode,
    String city,
    String email,
    Optional<Integer> termsDays,
    boolean taxExempt,
    String exemptReason,
    String taxNumber,
    String country,
    String language,
    Optional<BigDecimal> discountPercent,
    Optional<BigDecimal> openingBalance,
    EInvoiceWish eInvoice,
    List<String> formerly) {
  /** Copies its list. */
  public Owner {
    formerly = List.copyOf(formerly);
  }
}

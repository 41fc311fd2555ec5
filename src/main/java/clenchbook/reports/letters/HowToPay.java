package clenchbook.reports.letters;

import java.util.Optional;

/**
 * How the farrier would like to be paid.
 *
 * @param text the farrier's own words
 * @param iban account number
 * @param bic the bank's code
 * @param link a page to pay at, https only
 */
public record HowToPay(
    Optional<String> text, Optional<String> iban, Optional<String> bic, Optional<String> link) {}

package clenchbook.reports.letters;

import clenchbook.values.CreditorReference;
import java.util.Optional;

/**
 * How the farrier would like to be paid.
 *
 * @param text the farrier's own words
 * @param iban account number
 * @param bic the bank's code
 * @param link a page to pay at, https only
 * @param reference what a transfer shall say instead of the document's number
 */
public record HowToPay(
    Optional<String> text,
    Optional<String> iban,
    Optional<String> bic,
    Optional<String> link,
    Optional<CreditorReference> reference) {
  /**
   * Ways to pay under the document's own number.
   *
   * @param text the farrier's own words
   * @param iban account number
   * @param bic the bank's code
   * @param link a page to pay at
   */
  public HowToPay(
      Optional<String> text, Optional<String> iban, Optional<String> bic, Optional<String> link) {
    this(text, iban, bic, link, Optional.empty());
  }

  /**
   * What a transfer shall say, as it is printed.
   *
   * @param number the document's number; empty for a statement
   * @return the reference in groups of four, else the number
   */
  public String said(String number) {
    return reference.map(CreditorReference::inFours).orElse(number);
  }
}

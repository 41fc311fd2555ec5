package clenchbook.einvoice;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * An invoice or credit note in the terms of EN 16931. Amounts are in the currency's minor unit and
 * positive on a credit note too; they are written as they are.
 *
 * @param profile the rules it keeps
 * @param kind invoice or credit note
 * @param number BT-1
 * @param date BT-2
 * @param due BT-9
 * @param currency BT-5: ISO 4217
 * @param notes BT-22, in the document's language
 * @param buyerReference BT-10
 * @param corrects BG-3: the invoice that a credit note takes back from
 * @param seller BG-4
 * @param buyer BG-7
 * @param lines BG-25, at least one
 * @param taxes BG-23, one for each category and rate
 * @param totals BG-22
 * @param payment BG-16
 */
public record EInvoice(
    EInvoiceProfile profile,
    Kind kind,
    String number,
    LocalDate date,
    LocalDate due,
    String currency,
    List<String> notes,
    Optional<String> buyerReference,
    Optional<Corrected> corrects,
    EInvoiceParty seller,
    EInvoiceParty buyer,
    List<EInvoiceLine> lines,
    List<TaxBreakdown> taxes,
    Totals totals,
    Payment payment) {
  /** Copies its lists. */
  public EInvoice {
    notes = List.copyOf(notes);
    lines = List.copyOf(lines);
    taxes = List.copyOf(taxes);
    if (lines.isEmpty()) {
      throw new IllegalArgumentException("no line on " + number);
    }
  }

  /** What a document is: BT-3, by code list UNTDID 1001. */
  public enum Kind {
    /** It charges. */
    INVOICE("380"),
    /** It takes back. */
    CREDIT_NOTE("381");

    private final String code;

    Kind(String code) {
      this.code = code;
    }

    /**
     * The code.
     *
     * @return three digits
     */
    String code() {
      return code;
    }
  }

  /**
   * The invoice that is corrected.
   *
   * @param number BT-25
   * @param date BT-26
   */
  public record Corrected(String number, LocalDate date) {}

  /**
   * The sums.
   *
   * @param net BT-106 and BT-109: the sum of the lines
   * @param tax BT-110: the sum of the taxes
   * @param gross BT-112: net and tax
   * @param prepaid BT-113: what was paid at the truck
   * @param due BT-115: gross less prepaid
   */
  public record Totals(
      BigDecimal net, BigDecimal tax, BigDecimal gross, BigDecimal prepaid, BigDecimal due) {}

  /**
   * How to pay.
   *
   * @param means BT-81: the code of UNTDID 4461
   * @param text BT-82: the farrier's own words; may be empty
   * @param reference BT-83: what a transfer shall say
   * @param account BT-84: an account's number
   * @param holder BT-85: whose account it is; written only with an account
   * @param bank BT-86: the bank's code; written only with an account
   */
  public record Payment(
      String means,
      String text,
      String reference,
      Optional<String> account,
      String holder,
      Optional<String> bank) {}
}

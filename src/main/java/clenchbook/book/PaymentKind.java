package clenchbook.book;

import java.util.Locale;

/** What a payment is. */
public enum PaymentKind {
  /** Money received for invoices. */
  PAYMENT,
  /** Money received on account. */
  DEPOSIT,
  /** Money paid back. */
  REFUND,
  /** Given up; no money moved. */
  WRITTEN_OFF,
  /** Income, but no balance. */
  TIP;

  /**
   * The word used in the workbook and in files.
   *
   * @return in lower case, words separated by spaces
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}

package clenchbook.tax.income;

import clenchbook.texts.Message;

/** What a part of the income is, in the order in which the parts are shown. */
public enum IncomePart {
  /** Credit notes of the period. */
  CREDIT_NOTES("credit notes", Message.of("tax.part.creditNotes")),
  /** Work done before the register begins, or on no invoice. */
  BEFORE_REGISTER("from visits before the register", Message.of("tax.part.beforeRegister")),
  /** Invoices of the period. */
  INVOICES("invoices", Message.of("tax.part.invoices")),
  /** Money that pays no bill. */
  NO_BILL("matched with no bill", Message.of("tax.part.noBill")),
  /** Money that pays bills. */
  PAYMENTS("payments", Message.of("tax.part.payments")),
  /** Deposits. */
  ON_ACCOUNT("received on account", Message.of("tax.part.onAccount")),
  /** Money given back. */
  REFUNDS("refunds", Message.of("tax.part.refunds")),
  /** Money taken at the visit. */
  AT_TRUCK("taken at the truck", Message.of("tax.part.atTruck")),
  /** Tax within money that an earlier year counted whole. */
  HELD_TAX("tax within money held since an earlier year", Message.of("tax.part.heldTax")),
  /** Tips. */
  TIPS("tips", Message.of("tax.part.tips"));

  private final String word;
  private final Message said;

  IncomePart(String word, Message said) {
    this.word = word;
    this.said = said;
  }

  /** The words in files. */
  public String word() {
    return word;
  }

  /** The name of its line on a page: {@code of which tips}. */
  public Message said() {
    return said;
  }
}

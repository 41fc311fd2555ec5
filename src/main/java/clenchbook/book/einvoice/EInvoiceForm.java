package clenchbook.book.einvoice;

/** The form of structured invoice that an owner gets. */
public enum EInvoiceForm {
  /** None: the plain invoice alone. */
  NO("no"),
  /** The invoice's PDF with the structured invoice inside. */
  FACTUR_X("factur-x"),
  /** A file of its own beside the PDF, as German public bodies take it. */
  XRECHNUNG("xrechnung");

  private final String word;

  EInvoiceForm(String word) {
    this.word = word;
  }

  /**
   * The word used in the workbook.
   *
   * @return in lower case
   */
  public String word() {
    return word;
  }

  /**
   * The form of a word.
   *
   * @param word as the workbook has it, in lower case
   * @return the form; {@link #NO} for any other word
   */
  public static EInvoiceForm of(String word) {
    for (EInvoiceForm form : values()) {
      if (form.word.equals(word)) {
        return form;
      }
    }
    return NO;
  }
}

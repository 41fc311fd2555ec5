package clenchbook.einvoice;

import clenchbook.book.TaxCategory;
import java.util.List;

/** What a structured invoice says in the document's language, as its page does. */
public interface EInvoiceWords {
  /**
   * The smaller print of a line.
   *
   * @param line which of the document's lines, from 0
   * @return shoes, goods or other part, reason, discount, share; may be empty
   */
  List<String> details(int line);

  /**
   * Why no tax is charged.
   *
   * @param category how the tax is treated
   * @param reason what the book says, in words; may be empty
   * @return the ground; empty where tax is charged or zero-rated
   */
  String ground(TaxCategory category, String reason);

  /**
   * What stands beneath the sums.
   *
   * @return sentences, in order; may be empty
   */
  List<String> notes();
}

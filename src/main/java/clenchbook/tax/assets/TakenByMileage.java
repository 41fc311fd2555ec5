package clenchbook.tax.assets;

import clenchbook.tax.page.Wording;
import clenchbook.texts.Message;
import java.math.BigDecimal;

/**
 * What the money for a mile has taken off a vehicle's basis since it was bought.
 *
 * @param amount what it took, in the minor unit; nothing where it is not known
 * @param unknown why it is not known, as a sentence part that says what to ask; nothing where it is
 * @param remark what the reader should know of it all the same; none for nothing
 */
public record TakenByMileage(BigDecimal amount, Wording unknown, Message remark) {
  /** Whether the miles since the vehicle was bought are known. */
  public boolean known() {
    return unknown.isEmpty();
  }
}

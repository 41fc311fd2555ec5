package clenchbook.tax.assets;

import java.math.BigDecimal;

/**
 * What the money for a mile has taken off a vehicle's basis since it was bought.
 *
 * @param amount what it took, in the minor unit; nothing where it is not known
 * @param unknown why it is not known, as a sentence part that says what to ask; blank where it is
 * @param remark what the reader should know of it all the same; blank for nothing
 */
public record TakenByMileage(BigDecimal amount, String unknown, String remark) {
  /** Whether the miles since the vehicle was bought are known. */
  public boolean known() {
    return unknown.isEmpty();
  }
}

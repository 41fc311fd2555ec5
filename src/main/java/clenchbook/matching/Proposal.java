package clenchbook.matching;

import clenchbook.matching.bank.BankEntry;
import clenchbook.texts.Message;
import java.util.List;

/**
 * What an entry probably is.
 *
 * @param entry the entry
 * @param rows its rows for Payments: one, or one for each invoice of a sum
 * @param reference what the rows bear as Reference
 * @param sure how sure, in whole per cent, 0 to 99
 * @param why a sentence
 */
public record Proposal(
    BankEntry entry, List<PaymentRow> rows, String reference, int sure, Message why) {
  /** From this on an invoice is named. */
  public static final int SURE_ENOUGH = 90;

  /** Copies its list. */
  public Proposal {
    rows = List.copyOf(rows);
  }
}

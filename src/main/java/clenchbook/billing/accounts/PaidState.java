package clenchbook.billing.accounts;

import clenchbook.billing.documents.BilledDocument;
import java.math.BigDecimal;

/** The state of a document in words, with what payments have done to it. */
public final class PaidState {
  private PaidState() {}

  /**
   * The state as at the account's day.
   *
   * @param document the document
   * @param account its owner's account
   * @return {@code draft}, {@code void}, {@code issued}, {@code delivered}; once out: {@code part
   *     paid}, {@code paid} or {@code written off}
   */
  public static String of(BilledDocument document, Account account) {
    boolean charged = document.invoice() && document.gross().signum() > 0;
    if (!document.state().fixed() || !charged) {
      return document.state().word();
    }
    BigDecimal open = account.open().getOrDefault(document.number(), document.gross());
    if (open.signum() > 0) {
      return open.compareTo(document.gross()) < 0 ? "part paid" : document.state().word();
    }
    return account.settledBy().containsKey(document.number()) ? "written off" : "paid";
  }
}

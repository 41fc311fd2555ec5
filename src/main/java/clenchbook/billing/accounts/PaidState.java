package clenchbook.billing.accounts;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.Locale;

/** The state of a document, with what payments have done to it. */
public enum PaidState {
  /** Not yet sent. */
  DRAFT,
  /** Sent, and nothing of it is paid. */
  ISSUED,
  /** The mail server took it, and nothing of it is paid. */
  DELIVERED,
  /** A draft whose owner has nothing left. */
  VOID,
  /** Some of it is open still. */
  PART_PAID,
  /** Nothing of it is open. */
  PAID,
  /** Nothing of it is open, since the farrier gave up the rest. */
  WRITTEN_OFF;

  /**
   * The state as at the account's day.
   *
   * @param document the document
   * @param account its owner's account
   * @return the document's own state until payments change it
   */
  public static PaidState of(BilledDocument document, Account account) {
    boolean charged = document.invoice() && document.gross().signum() > 0;
    if (!document.state().fixed() || !charged) {
      return own(document);
    }
    BigDecimal open = account.open().getOrDefault(document.number(), document.gross());
    if (open.signum() > 0) {
      return open.compareTo(document.gross()) < 0 ? PART_PAID : own(document);
    }
    return account.settledBy().containsKey(document.number()) ? WRITTEN_OFF : PAID;
  }

  /**
   * The state of a document that no account knows.
   *
   * @param document the document
   * @return its own state
   */
  public static PaidState own(BilledDocument document) {
    return switch (document.state()) {
      case DRAFT -> DRAFT;
      case ISSUED -> ISSUED;
      case DELIVERED -> DELIVERED;
      case VOID -> VOID;
    };
  }

  /** The words in files, the same in every language: {@code part paid}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The state as the farrier reads it beside a document. */
  public Message message() {
    return switch (this) {
      case DRAFT -> Message.of("billing.state.draft");
      case ISSUED -> Message.of("billing.state.issued");
      case DELIVERED -> Message.of("billing.state.delivered");
      case VOID -> Message.of("billing.state.void");
      case PART_PAID -> Message.of("billing.state.partPaid");
      case PAID -> Message.of("billing.state.paid");
      case WRITTEN_OFF -> Message.of("billing.state.writtenOff");
    };
  }
}

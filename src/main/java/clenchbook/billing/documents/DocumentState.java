package clenchbook.billing.documents;

import java.util.Locale;

/** How far a document has come. Part paid, paid and written off follow from payments. */
public enum DocumentState {
  /** Not yet sent; replaced under its own number when the book changes. */
  DRAFT,
  /** Sent, or named by a payment: never changes again. */
  ISSUED,
  /** The mail server took it. */
  DELIVERED,
  /** A draft whose owner has nothing left; its number stays. */
  VOID;

  /**
   * The word in files.
   *
   * @return in lower case
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Whether the document never changes again.
   *
   * @return true once issued
   */
  public boolean fixed() {
    return this == ISSUED || this == DELIVERED;
  }
}

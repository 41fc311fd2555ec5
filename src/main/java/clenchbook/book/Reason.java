package clenchbook.book;

import java.util.Locale;

/** Why a horse was visited. */
public enum Reason {
  /** The usual round. */
  ROUTINE,
  /** A shoe was lost. */
  LOST_SHOE,
  /** The horse was lame. */
  LAMENESS,
  /** First visit. */
  NEW_HORSE,
  /** Kept in the book, not billed. */
  CANCELLED;

  /**
   * The word used in the workbook and in files.
   *
   * @return in lower case, words separated by spaces
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}

package clenchbook.book;

import java.util.Locale;

/** What a cost or quantity is for. */
public enum Unit {
  /** One. */
  PIECE,
  /** Two. */
  PAIR,
  /** Per pack pieces. */
  PACK,
  /** A kilogram. */
  KG,
  /** A whole stock bar. */
  BAR;

  /**
   * The word used in the workbook and in files.
   *
   * @return in lower case, words separated by spaces
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}

package clenchbook.book;

import java.util.Locale;

/** The sheets of the book. */
public enum SheetKind {
  /** The sheet Visits. */
  VISITS,
  /** The sheet Work. */
  WORK,
  /** The sheet Materials. */
  MATERIALS,
  /** The sheet Owners. */
  OWNERS,
  /** The sheet Horses. */
  HORSES,
  /** The sheet Places. */
  PLACES,
  /** The sheet Trips. */
  TRIPS,
  /** The sheet Purchases. */
  PURCHASES,
  /** The sheet Payments. */
  PAYMENTS,
  /** The sheet Assets. */
  ASSETS,
  /** The sheet Counts. */
  COUNTS,
  /** The sheet Tax. */
  TAX,
  /** The sheet Strain. */
  STRAIN,
  /** The sheet Settings. */
  SETTINGS,
  /** The sheet Headings. */
  HEADINGS;

  /**
   * The word used in the workbook and in files.
   *
   * @return in lower case, words separated by spaces
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * The sheet's name as the guide writes it.
   *
   * @return with a capital
   */
  public String title() {
    String word = word();
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }
}

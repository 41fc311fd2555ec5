package clenchbook.book;

import java.util.Locale;

/** What kind of rate a tax code has. */
public enum TaxKind {
  /** The standard rate. */
  STANDARD,
  /** A reduced rate. */
  REDUCED,
  /** Taxed at nothing. */
  ZERO,
  /** Exempt. */
  EXEMPT,
  /** Outside the tax. */
  OUTSIDE_SCOPE,
  /** Taxed, but the buyer owes the tax. */
  REVERSE_CHARGE;

  /**
   * The word used in the workbook and in files.
   *
   * @return in lower case, words separated by spaces
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * Whether tax is charged at the code's rate.
   *
   * @return false where nothing is charged, whatever the rate
   */
  public boolean charged() {
    return this == STANDARD || this == REDUCED;
  }
}

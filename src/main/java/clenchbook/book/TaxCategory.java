package clenchbook.book;

/**
 * How the tax of a line is treated, by the codes that structured invoices use.
 *
 * <p>Source: EN 16931-1:2017+A1:2019, BT-118 and BT-151, code list UNTDID 5305.
 */
public enum TaxCategory {
  /** Taxed, at the standard or a reduced rate. */
  S,
  /** Taxed at nothing. */
  Z,
  /** Exempt from tax. */
  E,
  /** Reverse charge: the buyer owes the tax. */
  AE,
  /** Outside the scope of tax. */
  O;

  /**
   * The category of a code's kind, for an owner who is not exempt and a rate above zero where the
   * kind charges one.
   *
   * @param kind the kind
   * @return its category
   */
  public static TaxCategory of(TaxKind kind) {
    return switch (kind) {
      case STANDARD, REDUCED -> S;
      case ZERO -> Z;
      case EXEMPT -> E;
      case REVERSE_CHARGE -> AE;
      case OUTSIDE_SCOPE -> O;
    };
  }
}

package clenchbook.jobs.charge;

import clenchbook.book.TaxCategory;
import clenchbook.book.TaxKind;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The tax on a line.
 *
 * @param code the code; empty for no tax
 * @param name the name printed; empty for no tax
 * @param ratePercent the rate in force on the day of the visit, in per cent; zero without a code
 *     and where the code's kind charges nothing
 * @param kind the code's kind; without a code exempt for a business with a tax number, else outside
 *     scope
 * @param reason why no tax is charged, in words or as a code, as the book gives it; empty where tax
 *     is charged or nothing is said
 * @param exempt true when the payer is exempt: the net stands under its code with tax 0
 * @param included true when the amount holds the tax
 */
public record LineTax(
    String code,
    String name,
    BigDecimal ratePercent,
    TaxKind kind,
    String reason,
    boolean exempt,
    boolean included) {
  /** No tax code at all, for a business without a tax number. */
  public static final LineTax NONE = untaxed(TaxKind.OUTSIDE_SCOPE);

  /** No tax code at all, for a business with a tax number. */
  public static final LineTax UNCODED = untaxed(TaxKind.EXEMPT);

  private static LineTax untaxed(TaxKind kind) {
    return new LineTax("", "", BigDecimal.ZERO, kind, "", false, false);
  }

  /**
   * A rate that is charged, or one of zero.
   *
   * @param code the code
   * @param name the name printed
   * @param ratePercent the rate in per cent
   * @param exempt true when the payer is exempt
   * @param included true when the amount holds the tax
   */
  public LineTax(
      String code, String name, BigDecimal ratePercent, boolean exempt, boolean included) {
    this(
        code,
        name,
        ratePercent,
        ratePercent.signum() == 0 ? TaxKind.ZERO : TaxKind.STANDARD,
        "",
        exempt,
        included);
  }

  /**
   * The line with the ground that stands for its category: an exempt payer's own where the payer is
   * what makes it exempt, else the code's; none where tax is charged or zero-rated.
   *
   * @param payers the exempt payer's ground; empty for a payer who is not exempt
   * @return the line's tax
   */
  LineTax because(Optional<String> payers) {
    String ground =
        switch (category()) {
          case S, Z -> "";
          case E -> payers.filter(own -> kind != TaxKind.EXEMPT || !own.isEmpty()).orElse(reason);
          case AE, O -> reason;
        };
    return new LineTax(code, name, ratePercent, kind, ground, exempt, included);
  }

  /**
   * The rate as a fraction.
   *
   * @return 0.2 for 20 per cent, exact
   */
  public BigDecimal rate() {
    return ratePercent.movePointLeft(2);
  }

  /**
   * The rate that is charged.
   *
   * @return in per cent; zero for an exempt payer
   */
  public BigDecimal chargedPercent() {
    return exempt ? BigDecimal.ZERO : ratePercent;
  }

  /**
   * How the line's tax is treated. An exempt payer's line is exempt, unless its code is zero-rated
   * or outside the scope by itself.
   *
   * @return the category
   */
  public TaxCategory category() {
    return switch (kind) {
      case ZERO -> TaxCategory.Z;
      case OUTSIDE_SCOPE -> TaxCategory.O;
      case EXEMPT -> TaxCategory.E;
      case REVERSE_CHARGE -> exempt ? TaxCategory.E : TaxCategory.AE;
      case STANDARD, REDUCED -> charged();
    };
  }

  private TaxCategory charged() {
    if (exempt) {
      return TaxCategory.E;
    }
    return ratePercent.signum() == 0 ? TaxCategory.Z : TaxCategory.S;
  }

  /**
   * Whether the line bears a code that is outside the scope of tax: such lines stand on an invoice
   * of their own.
   *
   * @return false for a line without code
   */
  public boolean outsideScope() {
    return !code.isEmpty() && category() == TaxCategory.O;
  }
}

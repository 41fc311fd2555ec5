package clenchbook.jobs;

import clenchbook.book.Material;
import clenchbook.book.MaterialKind;
import clenchbook.book.Purchase;
import clenchbook.book.Unit;
import clenchbook.values.Metal;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;

/**
 * What one piece of an item is by its list, and how many pieces a purchase brought. A bar counts in
 * its own Unit: kilograms when it is priced by mass, whole bars otherwise.
 */
public final class PieceCost {
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  private PieceCost() {}

  /**
   * List cost of one piece.
   *
   * @param row the row of Materials in force
   * @return Unit cost divided by the pieces of its Unit, else Pack cost by Per pack, to 34 figures;
   *     empty when the row gives neither
   */
  public static Optional<BigDecimal> list(Material row) {
    return row.unitCost()
        .flatMap(cost -> perUnit(row.unit(), row).map(pieces -> divide(cost, pieces)))
        .or(() -> row.packCost().flatMap(cost -> perPack(row).map(pieces -> divide(cost, pieces))));
  }

  /**
   * How many pieces a purchase brought.
   *
   * @param purchase the purchase
   * @param row the row of Materials it belongs to
   * @return Quantity times the pieces of its Unit, a blank Quantity counting as one; empty when the
   *     Unit can't be turned into pieces
   */
  public static Optional<BigDecimal> pieces(Purchase purchase, Material row) {
    BigDecimal quantity = purchase.quantity().orElse(BigDecimal.ONE);
    return row.kind() == MaterialKind.BAR
        ? barUnits(purchase.unit(), row).map(quantity::multiply)
        : perUnit(purchase.unit(), row).map(quantity::multiply);
  }

  /**
   * How much of its bar, in the bar's Unit, one handmade shoe takes.
   *
   * @param shoe the shoe's row of Materials, with Length and Cut
   * @param bar the bar's row in force
   * @return kilograms or bars, to 34 figures; empty when the length, or the bar's section or
   *     length, is missing
   */
  public static Optional<BigDecimal> barPerShoe(Material shoe, Material bar) {
    Optional<BigDecimal> length =
        shoe.lengthMm().map(mm -> mm.add(shoe.cutMm().orElse(BigDecimal.ZERO)));
    if (bar.unit() == Unit.KG) {
      return length.flatMap(mm -> bar.section().map(s -> s.massKg(mm, metal(shoe, bar))));
    }
    return length.flatMap(
        mm ->
            bar.barLengthMm().filter(whole -> whole.signum() > 0).map(whole -> divide(mm, whole)));
  }

  private static Metal metal(Material shoe, Material bar) {
    boolean aluminium =
        shoe.kind() == MaterialKind.ALUMINIUM
            || bar.item().toLowerCase(Locale.ROOT).contains("alumin");
    return aluminium ? Metal.ALUMINIUM : Metal.STEEL;
  }

  private static Optional<BigDecimal> perUnit(Unit unit, Material row) {
    return switch (unit) {
      case PAIR -> Optional.of(TWO);
      case PACK -> perPack(row);
      case PIECE, KG, BAR -> Optional.of(BigDecimal.ONE);
    };
  }

  private static Optional<BigDecimal> perPack(Material row) {
    return row.perPack().filter(pieces -> pieces.signum() > 0);
  }

  /** Bars and kilograms turn into each other by the mass of a whole bar. */
  private static Optional<BigDecimal> barUnits(Unit bought, Material bar) {
    Optional<BigDecimal> bars =
        switch (bought) {
          case PAIR -> Optional.of(TWO);
          case PACK -> perPack(bar);
          case PIECE, BAR, KG -> Optional.of(BigDecimal.ONE);
        };
    boolean inMass = bar.unit() == Unit.KG;
    if (inMass == (bought == Unit.KG)
        || (inMass && bought == Unit.PIECE && massOfBar(bar).isEmpty())) {
      return bars;
    }
    return inMass
        ? massOfBar(bar).flatMap(mass -> bars.map(mass::multiply))
        : massOfBar(bar).map(mass -> divide(BigDecimal.ONE, mass));
  }

  /**
   * Mass of one whole stock bar.
   *
   * @param bar the bar's row of Materials
   * @return kilograms; empty when its section or length is missing
   */
  public static Optional<BigDecimal> massOfBar(Material bar) {
    return bar.section()
        .flatMap(
            section ->
                bar.barLengthMm()
                    .map(
                        length ->
                            section.massKg(
                                length,
                                bar.item().toLowerCase(Locale.ROOT).contains("alumin")
                                    ? Metal.ALUMINIUM
                                    : Metal.STEEL)));
  }

  private static BigDecimal divide(BigDecimal amount, BigDecimal by) {
    return by.scale() == 0 && by.compareTo(BigDecimal.ONE) == 0
        ? amount.round(MathContext.DECIMAL128)
        : amount.divide(by, MathContext.DECIMAL128);
  }
}

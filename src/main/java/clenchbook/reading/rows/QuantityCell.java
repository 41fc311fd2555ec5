package clenchbook.reading.rows;

import clenchbook.book.MaterialKind;
import clenchbook.book.Unit;
import clenchbook.reading.cells.Measure;
import clenchbook.reading.cells.RowCells;
import clenchbook.reading.words.Choices;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Quantities of stock: a number in the row's Unit, or with a unit typed behind it. */
final class QuantityCell {
  private static final String HEADING = "Quantity";
  private static final List<Unit> TYPED = List.of(Unit.KG, Unit.PACK, Unit.BAR, Unit.PAIR);

  private QuantityCell() {}

  /** The unit of a purchase: that of its column, else the one typed behind the number. */
  static Unit unit(RowCells row) {
    if (row.has("Unit")) {
      return PriceRows.unit(row);
    }
    boolean pieces = row.isIn(HEADING, Measure.PIECE);
    return TYPED.stream()
        .filter(unit -> !pieces && row.isIn(HEADING, measure(unit, row)))
        .findFirst()
        .orElse(Unit.PIECE);
  }

  /** How much was bought, in the unit; below nothing for what went back. */
  static Optional<BigDecimal> bought(RowCells row, Unit unit) {
    return row.signedMeasure(HEADING, measure(unit, row));
  }

  /** How much was counted: pieces, or kilograms of what is not counted by the piece. */
  static Optional<BigDecimal> counted(RowCells row) {
    boolean mass = isCalled(row, MaterialKind.GAS) || isCalled(row, MaterialKind.BAR);
    boolean inMass = mass && row.isIn(HEADING, measure(Unit.KG, row));
    boolean inBars = row.isIn(HEADING, Measure.BAR);
    Unit unit = inMass ? Unit.KG : inBars ? Unit.BAR : Unit.PIECE;
    return row.measure(HEADING, measure(unit, row));
  }

  /** The measure that a unit's numbers have. */
  static Measure measure(Unit unit, RowCells row) {
    return switch (unit) {
      case PIECE -> Measure.PIECE;
      case PAIR -> Measure.PAIR;
      case PACK -> Measure.PACK;
      case BAR -> Measure.BAR;
      case KG -> isCalled(row, MaterialKind.GAS) ? Measure.KG_OF_PROPANE : Measure.KG;
    };
  }

  private static boolean isCalled(RowCells row, MaterialKind kind) {
    for (String word : row.name("Item").toLowerCase(Locale.ROOT).split("[^\\p{L}]+")) {
      for (Map.Entry<String, MaterialKind> known : Choices.MATERIAL.entrySet()) {
        if (known.getValue() == kind && known.getKey().equals(word)) {
          return true;
        }
      }
    }
    return false;
  }
}

package clenchbook.book;

import clenchbook.values.Section;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One row of Materials: an item, its cost and, for a handmade shoe, its making.
 *
 * @param source the row it was read from
 * @param item the item's name
 * @param kind what it is
 * @param size its size as text; empty = any size without a row of its own
 * @param unit what Unit cost is for
 * @param unitCost list cost of one Unit
 * @param perPack pieces in a pack
 * @param packCost list cost of a pack
 * @param price what an owner pays per piece as an extra; empty = included in the Work
 * @param section the section of a bar
 * @param lengthMm bar that one handmade shoe takes, mm
 * @param cutMm lost per cut, mm
 * @param bar the bar a handmade shoe is cut from
 * @param barLengthMm length of a stock bar, mm
 * @param makingMin minutes to make one
 * @param makingForgeMin minutes of forge to make one
 * @param reorderAt pieces on hand at which to reorder
 * @param supplier who sells it
 * @param from the first day it counts; empty = always
 */
public record Material(
    SourceRow source,
    String item,
    MaterialKind kind,
    String size,
    Unit unit,
    Optional<BigDecimal> unitCost,
    Optional<BigDecimal> perPack,
    Optional<BigDecimal> packCost,
    Optional<BigDecimal> price,
    Optional<Section> section,
    Optional<BigDecimal> lengthMm,
    Optional<BigDecimal> cutMm,
    String bar,
    Optional<BigDecimal> barLengthMm,
    Optional<BigDecimal> makingMin,
    Optional<BigDecimal> makingForgeMin,
    Optional<BigDecimal> reorderAt,
    String supplier,
    Optional<LocalDate> from) {}

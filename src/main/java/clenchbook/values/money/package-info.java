/**
 * Exact amounts: rounding to the minor unit and splitting by largest remainder. All types are
 * immutable and thread-safe; amounts are {@link java.math.BigDecimal} in the book's currency, never
 * binary floating point.
 */
@NullMarked
package clenchbook.values.money;

import org.jspecify.annotations.NullMarked;

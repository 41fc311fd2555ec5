/**
 * How to cut a list of pieces from equal bars with the fewest bars, with a proof or a gap.
 *
 * <p>No trade words and no money: lengths are whole units (the caller chooses hundredths of a
 * millimetre), so every comparison and every bound is exact integer arithmetic. Floating point only
 * steers the search towards good patterns; no answer and no proof rests on it. Start reading at
 * {@link clenchbook.stock.cutting.CuttingSolver}.
 *
 * <p>Method: column generation (Gilmore and Gomory, Operations Research 9:849-859, 1961 and
 * 11:863-888, 1963, from memory) for the lower bound, made exact in integers by Farley's bound
 * (Operations Research 38:922-923, 1990, from memory); then rounding and a complete search over
 * patterns.
 *
 * <p>All public types are immutable and thread-safe.
 */
@org.jspecify.annotations.NullMarked
package clenchbook.stock.cutting;

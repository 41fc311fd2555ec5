/**
 * From how many shoes a stop lighting the forge pays, and what a handmade set must earn, each with
 * an interval by drawing horses again. Start at {@link
 * clenchbook.comparison.breakeven.ForgeBreakEven}.
 */
@NullMarked
package clenchbook.comparison.breakeven;

import org.jspecify.annotations.NullMarked;

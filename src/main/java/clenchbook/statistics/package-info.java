/**
 * Differences, intervals, proportions and models, with no word of the trade in them. All types are
 * immutable and thread-safe unless they say otherwise; figures are binary floating point and never
 * money that is billed. Start at {@link clenchbook.statistics.StratifiedDifference}.
 */
@NullMarked
package clenchbook.statistics;

import org.jspecify.annotations.NullMarked;

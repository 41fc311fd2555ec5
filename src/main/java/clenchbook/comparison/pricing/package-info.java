/**
 * What each Work earns at today's prices, and what lost shoes cost. All types are immutable and
 * thread-safe. Start at {@link clenchbook.comparison.pricing.Pricing}.
 */
@NullMarked
package clenchbook.comparison.pricing;

import org.jspecify.annotations.NullMarked;

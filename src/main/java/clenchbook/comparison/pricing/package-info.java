/**
 * Prices: what each Work must cost to meet the wage or a margin, what a rise brings, who is billed
 * under the list, which Work loses money and why, and what callbacks cost.
 *
 * <p>Money is exact. All types are immutable and thread-safe; nothing here reads a clock, a file or
 * a locale. Start reading at {@link clenchbook.comparison.pricing.Pricing}.
 */
package clenchbook.comparison.pricing;

/**
 * What the farrier's own book says: hot with cold, handmade with keg, from how many shoes a stop
 * lighting the forge pays.
 *
 * <p>Like is compared with like, and each difference stands with its uncertainty. The numbers come
 * from {@link clenchbook.comparison.statistics}, which knows no trade words. All types are
 * immutable and thread-safe; nothing here reads a clock, a file or a locale.
 */
package clenchbook.comparison;

/**
 * What the farrier's own book says: hot with cold, handmade with keg, from how many shoes a stop
 * lighting the forge pays. Like is compared with like, and each difference stands with its
 * uncertainty. This room puts the answers together and into words, tables and pictures; the rooms
 * below find them. Start at {@link clenchbook.comparison.Comparisons}.
 */
@NullMarked
package clenchbook.comparison;

import org.jspecify.annotations.NullMarked;

/**
 * The share of shoes found lost, by the method that put each on. Start at {@link
 * clenchbook.comparison.lostshoes.LostShoes}.
 */
@NullMarked
package clenchbook.comparison.lostshoes;

import org.jspecify.annotations.NullMarked;

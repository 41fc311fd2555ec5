/**
 * Bank statements as files: ISO 20022 camt.052, camt.053 and camt.054, OFX 1 and 2, MT940 and CSV,
 * known by their content. Reads in one pass and decides nothing. Uses {@code matching} for the
 * records it fills and {@code texts} to say what is wrong, and no other package.
 *
 * <p>Start at {@link clenchbook.bankfiles.StatementFile}.
 */
@NullMarked
package clenchbook.bankfiles;

import org.jspecify.annotations.NullMarked;

/**
 * The pattern that invoice numbers are made by. Immutable and thread-safe. Start at {@link
 * clenchbook.billing.numbering.NumberPattern}.
 */
@NullMarked
package clenchbook.billing.numbering;

import org.jspecify.annotations.NullMarked;

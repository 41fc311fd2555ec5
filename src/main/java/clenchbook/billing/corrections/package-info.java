/**
 * Which visits are billed already, net of credits, and what a changed row takes back. Immutable and
 * thread-safe. Start at {@link clenchbook.billing.corrections.Corrections}.
 */
@NullMarked
package clenchbook.billing.corrections;

import org.jspecify.annotations.NullMarked;

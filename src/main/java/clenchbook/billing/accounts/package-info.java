/**
 * What an owner owes: documents settled by payments, and how old the rest is. Immutable and
 * thread-safe. Start at {@link clenchbook.billing.accounts.Settling}.
 */
@NullMarked
package clenchbook.billing.accounts;

import org.jspecify.annotations.NullMarked;

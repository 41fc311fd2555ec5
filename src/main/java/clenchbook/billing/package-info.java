/**
 * Invoices, credit notes, accounts and what is known of mails, as decisions over a given state of
 * the register. All types are immutable and thread-safe. Start at {@link
 * clenchbook.billing.MonthBilling}.
 */
@NullMarked
package clenchbook.billing;

import org.jspecify.annotations.NullMarked;

/**
 * Who has paid: bank entries set against open invoices, with how sure and why. Decides; reads and
 * writes nothing. All types are immutable and safe for use by several threads unless they say
 * otherwise.
 *
 * <p>Start at {@link clenchbook.matching.Matching}. The weights of the evidence are explained in
 * docs/payments.md.
 */
@NullMarked
package clenchbook.matching;

import org.jspecify.annotations.NullMarked;

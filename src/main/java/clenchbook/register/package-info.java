/**
 * The register: the invoices that were issued and the mails that were sent, in one file that common
 * tools open. Every step is on disk before the next is taken.
 */
@NullMarked
package clenchbook.register;

import org.jspecify.annotations.NullMarked;

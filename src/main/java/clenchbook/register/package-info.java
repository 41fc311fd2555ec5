/**
 * The register: the one memory of invoices, credit notes, payments seen and mails. An embedded SQL
 * database beside the workbook, readable by its owner only; nothing in it is ever deleted. Start at
 * {@link clenchbook.register.Register}.
 */
@NullMarked
package clenchbook.register;

import org.jspecify.annotations.NullMarked;

/**
 * Invoices, credit notes and accounts as decisions over a given state of the register: what each
 * document bears, its number, its tax, what is owed. All types are immutable and thread-safe; this
 * package uses money, book, job and charge. Start at {@link clenchbook.billing.MonthBilling}.
 */
package clenchbook.billing;

/**
 * Twenty books as farriers of five languages may keep them, each written before its author looked
 * at the program's lists of words, with the invoices that a person would write from them. Start at
 * {@link clenchbook.strangers.StrangersBooksTest}.
 */
package clenchbook.strangers;

/**
 * What the page for whoever prepares the return says, sentence by sentence, in English or in a
 * language of the country. Immutable and thread-safe. Start at {@link
 * clenchbook.tax.page.PageWords}.
 */
@NullMarked
package clenchbook.tax.page;

import org.jspecify.annotations.NullMarked;

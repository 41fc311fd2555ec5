/**
 * The page for whoever prepares the return, of at most three sheets, in English and the country's
 * language. Start at {@link clenchbook.tax.jurisdiction.page.PageWords}.
 */
@NullMarked
package clenchbook.tax.jurisdiction.page;

import org.jspecify.annotations.NullMarked;

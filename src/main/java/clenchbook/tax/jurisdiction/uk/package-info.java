/**
 * The United Kingdom: the boxes of the full self-employment pages. Start at {@link
 * clenchbook.tax.jurisdiction.uk.UkSummary}.
 */
@NullMarked
package clenchbook.tax.jurisdiction.uk;

import org.jspecify.annotations.NullMarked;

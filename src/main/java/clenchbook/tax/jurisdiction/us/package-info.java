/**
 * The United States: Schedule C line by line and an estimate of self-employment tax. Start at
 * {@link clenchbook.tax.jurisdiction.us.UsSummary}.
 */
@NullMarked
package clenchbook.tax.jurisdiction.us;

import org.jspecify.annotations.NullMarked;

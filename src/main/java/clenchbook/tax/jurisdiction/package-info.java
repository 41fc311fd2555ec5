/**
 * What a country's tax regime must say of itself, so that adding one touches nothing but its own
 * folder of rates, its own package beneath this one, and its entry in the list of jurisdictions.
 * Start at {@link clenchbook.tax.jurisdiction.Jurisdiction}.
 */
@NullMarked
package clenchbook.tax.jurisdiction;

import org.jspecify.annotations.NullMarked;

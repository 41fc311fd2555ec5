/**
 * Germany: the income-surplus statement, small businesses, advance returns, trip allowances. Start
 * at {@link clenchbook.tax.jurisdiction.de.DeJurisdiction}.
 */
@NullMarked
package clenchbook.tax.jurisdiction.de;

import org.jspecify.annotations.NullMarked;

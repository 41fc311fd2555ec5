/**
 * Canada: Form T2125, GST/HST by the province of the work, the duties of a mileage log, classes of
 * capital cost allowance. Start at {@link clenchbook.tax.jurisdiction.ca.CaJurisdiction}.
 */
@NullMarked
package clenchbook.tax.jurisdiction.ca;

import org.jspecify.annotations.NullMarked;

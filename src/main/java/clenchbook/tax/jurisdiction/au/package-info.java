/**
 * Australia: business and professional items, activity statements, cents per kilometre, the small
 * business pool. Start at {@link clenchbook.tax.jurisdiction.au.AuJurisdiction}.
 */
@NullMarked
package clenchbook.tax.jurisdiction.au;

import org.jspecify.annotations.NullMarked;

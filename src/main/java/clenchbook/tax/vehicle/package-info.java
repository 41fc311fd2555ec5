/**
 * The vehicle at the regime's money for a distance and at what it cost, from the mileage log.
 * Immutable and thread-safe. Start at {@link clenchbook.tax.vehicle.Vehicle}.
 */
@NullMarked
package clenchbook.tax.vehicle;

import org.jspecify.annotations.NullMarked;

/**
 * Hours, shoes and days worked, from jobs and trips, with the farrier's own limits beside them.
 * Minutes and hours are binary floating point; nothing here is money. Immutable and thread-safe.
 * Start at {@link clenchbook.workload.hours.WorkDays}.
 */
@NullMarked
package clenchbook.workload.hours;

import org.jspecify.annotations.NullMarked;

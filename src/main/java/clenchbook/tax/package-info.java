/**
 * The year's end: the summary for a preparer, the mileage log, the asset register, the journal, and
 * the cautions with their sources. It holds no rate of its own, and only the rooms under {@code
 * jurisdiction} know a country. Public types are immutable and thread-safe. Start at {@link
 * clenchbook.tax.YearEnd}.
 */
@NullMarked
package clenchbook.tax;

import org.jspecify.annotations.NullMarked;

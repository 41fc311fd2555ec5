/**
 * The year's end: the summary for a preparer, the mileage log, the asset register, the journal, and
 * the cautions with their sources.
 *
 * <p>Takes the frozen book, what was billed, and the rate tables; gives lines, rows behind each
 * line, and reports. It touches no file, clock or locale, and holds no rate of its own: every rate,
 * limit and line number comes from {@code clenchbook.rates}. May use {@code money}, {@code
 * measure}, {@code problem}, {@code book}, {@code rates} and {@code report}. Public types are
 * immutable and thread-safe. Start with {@link clenchbook.yearend.YearEnd}.
 */
package clenchbook.yearend;

/**
 * The whole month decided as one value: every figure table, report, letter and problem, from the
 * book and the state of the register. Immutable and thread-safe. Start at {@link
 * clenchbook.reports.month.MonthFindings}.
 */
@NullMarked
package clenchbook.reports.month;

import org.jspecify.annotations.NullMarked;

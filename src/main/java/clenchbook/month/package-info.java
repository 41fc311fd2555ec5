/**
 * The whole month decided as one value: every figure table, report, letter and problem, from the
 * book and the state of the register. All types are immutable and thread-safe; this package may use
 * every other package of the core. Start at {@link clenchbook.month.MonthFindings}.
 */
package clenchbook.month;

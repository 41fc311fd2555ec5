/**
 * One class per command: read, decide, write. The only package that knows the day of the run, the
 * machine's locale and environment. Start at {@link clenchbook.run.MonthEndRun}.
 */
package clenchbook.run;

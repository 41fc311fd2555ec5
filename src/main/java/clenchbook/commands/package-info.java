/**
 * One class for each command: read, decide, write. With its rooms the only part that knows the day
 * of the run, the machine's locale and environment. Start at {@link
 * clenchbook.commands.MonthEndRun}.
 */
@NullMarked
package clenchbook.commands;

import org.jspecify.annotations.NullMarked;

/**
 * Arguments in, exit code out: the only package that may end the process. Start at {@link
 * clenchbook.cli.Clenchbook}.
 */
@NullMarked
package clenchbook.cli;

import org.jspecify.annotations.NullMarked;

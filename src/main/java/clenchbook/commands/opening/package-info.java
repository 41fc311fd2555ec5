/**
 * Opens the book and the register for a command, and says in plain words what cannot be opened.
 * Start at {@link clenchbook.commands.opening.OpenBook}.
 */
@NullMarked
package clenchbook.commands.opening;

import org.jspecify.annotations.NullMarked;

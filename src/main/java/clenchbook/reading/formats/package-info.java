/**
 * Opens a file of tables in any accepted format, in little memory, and refuses what would harm.
 * Start at {@link clenchbook.reading.formats.TableFile}.
 */
@NullMarked
package clenchbook.reading.formats;

import org.jspecify.annotations.NullMarked;

/**
 * A book moves house: packed with all that a run reads beside it, and put back elsewhere. Start at
 * {@link clenchbook.commands.moving.BackupRun}.
 */
@NullMarked
package clenchbook.commands.moving;

import org.jspecify.annotations.NullMarked;

/**
 * What belongs to a book when it moves to another computer, the list that a backup bears, and what
 * a file must be to be taken for a backup. Touches no file. Start at {@link
 * clenchbook.backup.Contents}.
 */
@NullMarked
package clenchbook.backup;

import org.jspecify.annotations.NullMarked;

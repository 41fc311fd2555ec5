/**
 * How files come to rest on the disk: safe names, the record of a run, tables as CSV, and nothing
 * removed that a run did not write. Start at {@link clenchbook.print.files.OutputFolder}.
 */
@NullMarked
package clenchbook.print.files;

import org.jspecify.annotations.NullMarked;

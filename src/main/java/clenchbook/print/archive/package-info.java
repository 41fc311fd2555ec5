/**
 * What a document needs to be read in ten years: its colours' meaning, a description of itself, a
 * file that goes with it. Start at {@link clenchbook.print.archive.ArchiveWriter}.
 */
@NullMarked
package clenchbook.print.archive;

import org.jspecify.annotations.NullMarked;

/**
 * Reports, pages and tables of figures as blocks: headings, sentences, tables, charts, with no
 * layout and no arithmetic left. Immutable and thread-safe. Start at {@link
 * clenchbook.reports.blocks.Report}.
 */
@NullMarked
package clenchbook.reports.blocks;

import org.jspecify.annotations.NullMarked;

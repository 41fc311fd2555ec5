/**
 * From records to PDF: page templates, the layout of reports, and a file that has the same bytes on
 * every run, whatever the clock, zone, locale and fonts of the machine. Start at {@link
 * clenchbook.print.pdf.PdfDocuments}.
 */
@NullMarked
package clenchbook.print.pdf;

import org.jspecify.annotations.NullMarked;

/**
 * Puts finished figures on paper, on a page and into tables: PDF, HTML and CSV.
 *
 * <p>Belongs to the shell: it writes, and decides nothing about money. It takes the records of
 * {@code clenchbook.report} as they are and formats them by the language and country they carry,
 * never by the machine's. Start reading at {@link clenchbook.document.PdfDocuments} for paper, at
 * {@code HtmlPage} for the page and at {@link clenchbook.document.OutputFolder} for how files come
 * to rest on the disk.
 *
 * <p>The same record gives the same bytes on every run, whatever the clock, zone, locale and the
 * fonts of the machine.
 */
@org.jspecify.annotations.NullMarked
package clenchbook.document;

/**
 * Which sheet is which, where its headings stand and what each column means. Start at {@link
 * clenchbook.reading.recognise.SheetRecognizer}.
 */
@NullMarked
package clenchbook.reading.recognise;

import org.jspecify.annotations.NullMarked;

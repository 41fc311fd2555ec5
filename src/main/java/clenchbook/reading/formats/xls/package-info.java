/**
 * Workbooks of the older binary format, of 1993 and of 1997. Start at {@link
 * clenchbook.reading.formats.xls.XlsSource}.
 */
@NullMarked
package clenchbook.reading.formats.xls;

import org.jspecify.annotations.NullMarked;

/**
 * Workbooks of the older binary format, BIFF8. Start at {@link
 * clenchbook.reading.formats.xls.XlsSource}.
 */
@NullMarked
package clenchbook.reading.formats.xls;

import org.jspecify.annotations.NullMarked;

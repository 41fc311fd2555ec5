/**
 * A folder of CSV files, one a sheet (RFC 4180 and its usual variations). Start at {@link
 * clenchbook.reading.formats.csv.CsvSource}.
 */
@NullMarked
package clenchbook.reading.formats.csv;

import org.jspecify.annotations.NullMarked;

/**
 * Workbooks of Office Open XML (ECMA-376, Part 1). Start at {@link
 * clenchbook.reading.formats.xlsx.XlsxSource}.
 */
@NullMarked
package clenchbook.reading.formats.xlsx;

import org.jspecify.annotations.NullMarked;

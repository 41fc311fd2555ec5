/**
 * Workbooks of OpenDocument (ISO/IEC 26300). Start at {@link
 * clenchbook.reading.formats.ods.OdsSource}.
 */
@NullMarked
package clenchbook.reading.formats.ods;

import org.jspecify.annotations.NullMarked;

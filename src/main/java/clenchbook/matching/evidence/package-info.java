/**
 * What the texts of a bank entry say: the invoices they name and the owners they speak for. The
 * indexes are not thread-safe; all else is immutable.
 */
@NullMarked
package clenchbook.matching.evidence;

import org.jspecify.annotations.NullMarked;

/**
 * Income, goods and categories of cost, in no country's form. Start at {@link
 * clenchbook.tax.jurisdiction.plain.PlainSummary}.
 */
@NullMarked
package clenchbook.tax.jurisdiction.plain;

import org.jspecify.annotations.NullMarked;

/**
 * Everything found for one period before it is set out in a regime's lines. Start at {@link
 * clenchbook.tax.figures.YearFigures}.
 */
@NullMarked
package clenchbook.tax.figures;

import org.jspecify.annotations.NullMarked;

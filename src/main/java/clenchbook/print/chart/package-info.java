/**
 * Charts as pictures, in the house's colours and hatchings. Start at {@link
 * clenchbook.print.chart.ChartPicture}.
 */
@NullMarked
package clenchbook.print.chart;

import org.jspecify.annotations.NullMarked;

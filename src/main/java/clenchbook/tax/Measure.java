package clenchbook.tax;

import clenchbook.tax.page.Wording;

/**
 * One measure of the year's driving.
 *
 * @param what what is measured
 * @param value the figure, as files have it
 * @param unit what it is counted in
 * @param basis what it rests on
 */
record Measure(Wording what, String value, Wording unit, Wording basis) {}

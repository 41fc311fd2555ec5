/**
 * Makes the sample workbooks: two invented farriers, fourteen months each, from seeded draws.
 *
 * <p>Start at {@link clenchbook.samples.SampleWorkbooks}. Every name, place and figure is invented;
 * the ranges of prices, minutes and mileages are common practice, no source.
 */
package clenchbook.samples;

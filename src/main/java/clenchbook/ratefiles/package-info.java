/**
 * Reads the rate tables that come with the program, and those the farrier or accountant lays over
 * them.
 *
 * <p>Shell: reads files and resources, never writes. Start with {@link
 * clenchbook.ratefiles.RateFiles}.
 */
package clenchbook.ratefiles;

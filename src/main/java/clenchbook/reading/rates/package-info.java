/**
 * Reads the rate tables that come with the program, and those that the farrier or accountant puts
 * over them. Start at {@link clenchbook.reading.rates.RateFiles}.
 */
@NullMarked
package clenchbook.reading.rates;

import org.jspecify.annotations.NullMarked;

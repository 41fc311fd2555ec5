/**
 * What the starter workbook holds, in each language: who writes it takes it from here, and so does
 * the reader, which passes over example rows that nobody has changed. Start at {@link
 * clenchbook.reading.starter.StarterPlan}.
 */
@NullMarked
package clenchbook.reading.starter;

import org.jspecify.annotations.NullMarked;

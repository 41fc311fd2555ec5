/**
 * Lengths, masses, sections of bar, stretches of days, and how a figure was obtained. All types are
 * immutable and thread-safe.
 */
@NullMarked
package clenchbook.values;

import org.jspecify.annotations.NullMarked;

/**
 * Bank statements and their entries as values, whatever file they came from, and whether they are
 * whole. All types are immutable and thread-safe.
 */
@NullMarked
package clenchbook.matching.bank;

import org.jspecify.annotations.NullMarked;

/**
 * Faults of the farrier's data as values: what is wrong, in which cell, what was expected. All
 * types are immutable and thread-safe; this package uses nothing else of the program.
 */
package clenchbook.problem;

/**
 * Lengths, masses and sections of bar, exact. All types are immutable and thread-safe; this package
 * uses nothing else of the program.
 */
package clenchbook.measure;

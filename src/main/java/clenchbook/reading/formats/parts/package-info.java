/**
 * The parts of a packed file, each with a bound on what it may unpack to, and XML without document
 * types and entities.
 */
@NullMarked
package clenchbook.reading.formats.parts;

import org.jspecify.annotations.NullMarked;

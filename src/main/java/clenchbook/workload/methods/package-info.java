/**
 * What a published method of scoring work is, how far it may be trusted, and what it says of a day.
 * Immutable and thread-safe. Start at {@link clenchbook.workload.methods.Method}.
 */
@NullMarked
package clenchbook.workload.methods;

import org.jspecify.annotations.NullMarked;

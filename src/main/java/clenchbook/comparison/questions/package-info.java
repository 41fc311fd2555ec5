/**
 * Which jobs may be compared, on what measure and in which strata, and what the comparison answers.
 * Immutable and thread-safe. Start at {@link clenchbook.comparison.questions.Comparison}.
 */
@NullMarked
package clenchbook.comparison.questions;

import org.jspecify.annotations.NullMarked;

/**
 * Every method that the ratings allow, over the real hours of each day and over a year. Immutable
 * and thread-safe. Start at {@link clenchbook.workload.scores.DayScores}.
 */
@NullMarked
package clenchbook.workload.scores;

import org.jspecify.annotations.NullMarked;

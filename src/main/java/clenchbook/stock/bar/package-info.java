/**
 * How much bar the coming shoes take and how many bars that is. Immutable and thread-safe. Start at
 * {@link clenchbook.stock.bar.BarPlan}.
 */
@NullMarked
package clenchbook.stock.bar;

import org.jspecify.annotations.NullMarked;

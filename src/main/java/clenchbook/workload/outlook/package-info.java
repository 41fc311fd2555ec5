/**
 * What is still to come until the farrier means to stop, and what another mix of hot and cold would
 * have made of the past: arithmetic on what happened, no forecast. Immutable and thread-safe. Start
 * at {@link clenchbook.workload.outlook.StopAge}.
 */
@NullMarked
package clenchbook.workload.outlook;

import org.jspecify.annotations.NullMarked;

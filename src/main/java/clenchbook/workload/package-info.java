/**
 * What the year's work asks of the farrier's body: hours per posture and tool, strain and exposure
 * by published methods, projections against the farrier's own limits.
 *
 * <p>May use {@code money}, {@code measure}, {@code problem}, {@code book}, {@code job}, {@code
 * costing} and {@code report}; touches no file, clock or locale. All types are immutable and safe
 * between threads. Minutes, hours and scores are {@code double}; nothing here is money. Start
 * reading at {@code Workload}; the published methods are {@code RevisedStrainIndex}, {@code
 * CompositeStrainIndex}, {@code CumulativeStrainIndex}, {@code HandArmVibration}, {@code NoiseDose}
 * and {@code TrunkPosture}, each with its {@link clenchbook.workload.Method}.
 *
 * <p>None of the methods was validated on farriers. They are an aid to planning and no medical
 * opinion.
 */
package clenchbook.workload;

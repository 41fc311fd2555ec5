package clenchbook.workload.strain;

/**
 * One kind of hand effort within a task, as the farrier rated and counted it.
 *
 * @param effortCr10 how hard on the CR-10 scale, 0 to 10
 * @param effortsPerMinute how many efforts a minute
 * @param secondsPerEffort how long one effort lasts
 * @param wristDegrees how far the wrist is bent, 0 = straight
 * @param direction which way it is bent
 */
public record HandEffort(
    double effortCr10,
    double effortsPerMinute,
    double secondsPerEffort,
    double wristDegrees,
    WristDirection direction) {}

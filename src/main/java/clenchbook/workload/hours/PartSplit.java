package clenchbook.workload.hours;

import clenchbook.book.Shaping;
import clenchbook.jobs.Job;
import clenchbook.jobs.JobMinutes;
import clenchbook.jobs.Timed;
import java.util.EnumMap;
import java.util.Map;

/**
 * A job's minutes by activity.
 *
 * <p>Without a Total each part stands as measured or standard. A Total replaces the sum: parts that
 * the row gives stand, the rest of the Total is split over the others as their standard minutes are
 * (trimming where there are none), and parts that are together longer than the Total shrink to it.
 * A helper's minutes are somebody else's body and stand nowhere here.
 */
final class PartSplit {

  private final Map<Activity, Timed> parts = new EnumMap<>(Activity.class);

  private PartSplit(Job job) {
    JobMinutes minutes = job.minutes();
    parts.put(Activity.TRIM, minutes.trim());
    parts.put(shaping(job), minutes.shape());
    parts.put(Activity.NAIL, minutes.nail());
    parts.put(Activity.GRIND, minutes.grind());
  }

  /** Shaping that is not said to be hot needs no fire and is counted at the stall jack. */
  static Activity shaping(Job job) {
    return job.shaping().filter(Shaping.HOT::equals).isPresent()
        ? Activity.SHAPE_HOT
        : Activity.SHAPE_COLD;
  }

  /** The minutes of work on this horse; making and setting up are counted elsewhere. */
  static Map<Activity, Minutes> of(Job job) {
    PartSplit split = new PartSplit(job);
    return job.minutes()
        .total()
        .map(total -> split.ofTotal(total.doubleValue()))
        .orElseGet(split::ofParts);
  }

  private Map<Activity, Minutes> ofParts() {
    Map<Activity, Minutes> result = new EnumMap<>(Activity.class);
    parts.forEach(
        (activity, part) ->
            add(result, activity, Minutes.of(part.minutes().doubleValue(), part.basis())));
    return result;
  }

  private Map<Activity, Minutes> ofTotal(double total) {
    double own = sum(true);
    if (own >= total) {
      return shared(true, total, own, total);
    }
    double rest = total - own;
    double standard = sum(false);
    Map<Activity, Minutes> result = shared(true, own, own, total);
    Map<Activity, Minutes> others =
        standard > 0
            ? shared(false, rest, standard, total)
            : Map.of(Activity.TRIM, own > 0 ? Minutes.ofSplit(rest) : measured(rest));
    others.forEach((activity, more) -> add(result, activity, more));
    return result;
  }

  /** An amount over the row's own or over the standard parts, in proportion to them. */
  private Map<Activity, Minutes> shared(boolean own, double amount, double sum, double total) {
    Map<Activity, Minutes> result = new EnumMap<>(Activity.class);
    parts.forEach(
        (activity, part) -> {
          double minutes = part.minutes().doubleValue();
          if (part.measured() == own && minutes > 0) {
            double given = minutes == sum ? amount : amount * minutes / sum;
            boolean certain = own ? amount == sum : given == total;
            add(result, activity, certain ? measured(given) : Minutes.ofSplit(given));
          }
        });
    return result;
  }

  private double sum(boolean ownParts) {
    return parts.values().stream()
        .filter(part -> part.measured() == ownParts)
        .mapToDouble(part -> part.minutes().doubleValue())
        .sum();
  }

  private static Minutes measured(double minutes) {
    return new Minutes(minutes, 0, 0, 0);
  }

  private static void add(Map<Activity, Minutes> result, Activity activity, Minutes more) {
    if (more.total() > 0) {
      result.merge(activity, more, Minutes::plus);
    }
  }
}

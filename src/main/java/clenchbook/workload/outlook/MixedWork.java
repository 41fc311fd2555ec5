package clenchbook.workload.outlook;

import clenchbook.workload.hours.Activity;
import clenchbook.workload.hours.Estimate;
import clenchbook.workload.hours.Load;
import clenchbook.workload.hours.ShoeTally;
import clenchbook.workload.strain.Ratings;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the past work would have been under another mix of hot and cold: arithmetic, no forecast.
 *
 * <p>Steel shoes change their shaping; each takes as long as it did, plus or less the difference
 * that the comparisons show on this farrier's own jobs. Nothing is made by hand, so making falls
 * away. All hot lights the forge at every stop with steel shoes, all cold at none. Unshaped shoes
 * and aluminium stay as they are.
 */
public final class MixedWork {

  private final Load past;
  private final double setUpMinutes;
  private final Optional<ShapeDifference> hotLessCold;

  public MixedWork(Load past, double setUpMinutes, Optional<ShapeDifference> hotLessCold) {
    this.past = past;
    this.setUpMinutes = setUpMinutes;
    this.hotLessCold = hotLessCold;
  }

  /** The shoes under a mix. */
  static ShoeTally shoes(ShoeTally now, Mix mix) {
    double steel = now.hotSteel() + now.coldSteel();
    double minutes = now.hotSteelMinutes() + now.coldSteelMinutes();
    return switch (mix) {
      case TODAY -> now;
      case ALL_KEG_HOT ->
          new ShoeTally(
              steel, 0, now.hotAluminium(), now.coldAluminium(), now.unshaped(), 0, minutes, 0);
      case ALL_KEG_COLD ->
          new ShoeTally(
              0, steel, now.hotAluminium(), now.coldAluminium(), now.unshaped(), 0, 0, minutes);
    };
  }

  /** Minutes at the stall jack; empty where the mix needs the difference and there is none. */
  Optional<Estimate> stallJackMinutes(Mix mix) {
    double now = past.minutes(Activity.SHAPE_COLD).total();
    return switch (mix) {
      case TODAY -> Optional.of(Estimate.of(now));
      case ALL_KEG_HOT -> Optional.of(Estimate.of(now - past.shoes().coldSteelMinutes()));
      case ALL_KEG_COLD ->
          perShoe(-past.shoes().hotSteel())
              .map(Estimate.of(now + past.shoes().hotSteelMinutes())::plus);
    };
  }

  /** Minutes at the anvil; empty where the mix needs the difference and there is none. */
  Optional<Estimate> anvilMinutes(Mix mix) {
    double now = past.minutes(Activity.SHAPE_HOT).total();
    return switch (mix) {
      case TODAY -> Optional.of(Estimate.of(now));
      case ALL_KEG_HOT ->
          perShoe(past.shoes().coldSteel())
              .map(Estimate.of(now + past.shoes().coldSteelMinutes())::plus);
      case ALL_KEG_COLD -> Optional.of(Estimate.of(now - past.shoes().hotSteelMinutes()));
    };
  }

  /** What all hours change by; empty where the mix needs the difference and there is none. */
  Optional<Estimate> changeOfHours(Mix mix) {
    return switch (mix) {
      case TODAY -> Optional.of(Estimate.of(0));
      case ALL_KEG_HOT ->
          perShoe(past.shoes().coldSteel())
              .map(Estimate.of(setUpChange(past.steelStops() * setUpMinutes) - making())::plus)
              .map(sum -> sum.map(minutes -> minutes / 60));
      case ALL_KEG_COLD ->
          perShoe(-past.shoes().hotSteel())
              .map(Estimate.of(setUpChange(0) - making())::plus)
              .map(sum -> sum.map(minutes -> minutes / 60));
    };
  }

  /** What shaping the hot steel shoes hot took more (or less, negative) than cold, minutes. */
  public Optional<Estimate> hotShapingMinutes() {
    return perShoe(past.shoes().hotSteel());
  }

  /** Minutes spent setting the forge up. */
  public double setUpSpent() {
    return past.minutes(Activity.SET_UP).total();
  }

  /** Blows under a mix; empty where none are rated. */
  OptionalDouble blows(Mix mix, Ratings ratings) {
    return ratings.blows(shoes(past.shoes(), mix));
  }

  private double setUpChange(double then) {
    return then - setUpSpent();
  }

  private double making() {
    return past.minutes(Activity.MAKE).total();
  }

  /** So many shoes times the difference. No shoes need no difference. */
  private Optional<Estimate> perShoe(double shoes) {
    if (shoes == 0) {
      return Optional.of(Estimate.of(0));
    }
    return hotLessCold.map(difference -> difference.estimate().map(minutes -> minutes * shoes));
  }
}

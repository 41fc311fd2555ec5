package clenchbook.workload.outlook;

import clenchbook.workload.hours.Activity;
import clenchbook.workload.hours.Digits;
import clenchbook.workload.hours.Estimate;
import clenchbook.workload.hours.HoursMeasure;
import clenchbook.workload.hours.Load;
import clenchbook.workload.hours.PastYear;
import clenchbook.workload.hours.Phrase;
import clenchbook.workload.hours.WorkDay;
import clenchbook.workload.strain.Ratings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a changed week would have made of the past year: arithmetic on what happened, no forecast
 * and no promise that the work could be moved.
 */
public final class ChangedWeek {

  private final PastYear past;
  private final Ratings ratings;
  private final double setUpMinutes;
  private final Optional<ShapeDifference> hotLessCold;

  /**
   * A change and what it takes off (negative) or adds to a year.
   *
   * @param name the change, in words
   * @param hours hours in all; empty where it needs the comparison of hot with cold
   * @param horses horse-visits that would not have been seen on those days
   * @param stallJackHours hours at the stall jack; empty as above
   * @param blows hammer blows; empty where none are rated
   */
  public record Change(
      Phrase name,
      Optional<Estimate> hours,
      double horses,
      Optional<Estimate> stallJackHours,
      OptionalDouble blows) {}

  /**
   * What a changed week would have made of the past year. Set-up in minutes a stop; the difference
   * is empty where the comparisons show none.
   */
  public ChangedWeek(
      PastYear past, Ratings ratings, double setUpMinutes, Optional<ShapeDifference> hotLessCold) {
    this.past = past;
    this.ratings = ratings;
    this.setUpMinutes = setUpMinutes;
    this.hotLessCold = hotLessCold;
  }

  /** The changes in a fixed order; without a limit of horses a day that one is left out. */
  public List<Change> changes(OptionalDouble horsesPerDay) {
    List<Change> changes = new ArrayList<>();
    changes.add(oneMoreRestDay());
    horsesPerDay.ifPresent(limit -> changes.add(noDayAbove(limit)));
    changes.add(mix(Mix.ALL_KEG_HOT));
    changes.add(mix(Mix.ALL_KEG_COLD));
    return changes;
  }

  /** Each worked week loses one of its average days. */
  private Change oneMoreRestDay() {
    Share less = new Share();
    for (Load week : past.workedWeeks()) {
      less.take(week, 1.0 / week.daysWorked(), week.hours());
    }
    return less.change(Phrase.of("one more rest day a week", "workload.change.restDay"));
  }

  /** Days above the limit lose the horses beyond it with their share of the work, not the drive. */
  private Change noDayAbove(double limit) {
    Share less = new Share();
    for (WorkDay day : past.days()) {
      Load load = day.load();
      if (load.horses() > limit) {
        double work =
            load.hours() - load.hours(HoursMeasure.DRIVING) - load.hours(HoursMeasure.SETTING_UP);
        less.take(load, 1 - limit / load.horses(), work);
      }
    }
    return less.change(
        Phrase.of(
            "no day above " + Digits.plain(limit) + " horses",
            "workload.change.horses",
            Digits.rounded(limit, 2),
            (int) Math.ceil(limit)));
  }

  private Change mix(Mix mix) {
    MixedWork work = new MixedWork(past.load(), setUpMinutes, hotLessCold);
    double now = past.load().minutes(Activity.SHAPE_COLD).total();
    OptionalDouble blows = work.blows(mix, ratings);
    return new Change(
        mix.words(),
        work.changeOfHours(mix).map(change -> change.map(hours -> hours * past.scale())),
        0,
        work.stallJackMinutes(mix)
            .map(then -> then.map(minutes -> (minutes - now) / 60 * past.scale())),
        blows.isEmpty()
            ? blows
            : OptionalDouble.of(
                (blows.getAsDouble() - ratings.blows(past.load().shoes()).orElse(0))
                    * past.scale()));
  }

  /** What is taken off, summed over weeks or days. */
  private final class Share {
    private double hours;
    private double horses;
    private double stallJack;
    private double blows;

    void take(Load load, double share, double hoursOfIt) {
      hours += hoursOfIt * share;
      horses += load.horses() * share;
      stallJack += load.hours(HoursMeasure.AT_THE_STALL_JACK) * share;
      blows += ratings.blows(load.shoes()).orElse(0) * share;
    }

    Change change(Phrase name) {
      double scale = -past.scale();
      return new Change(
          name,
          Optional.of(Estimate.of(hours * scale)),
          horses * scale,
          Optional.of(Estimate.of(stallJack * scale)),
          ratings.ratesBlows() ? OptionalDouble.of(blows * scale) : OptionalDouble.empty());
    }
  }
}

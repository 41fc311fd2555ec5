package clenchbook.workload.outlook;

import clenchbook.statistics.Interval;
import clenchbook.statistics.Moments;
import clenchbook.statistics.StudentT;
import clenchbook.workload.hours.Estimate;
import clenchbook.workload.hours.Load;
import clenchbook.workload.hours.PastYear;
import clenchbook.workload.strain.Ratings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What is still to come until the farrier means to stop, if every year is like the past one.
 *
 * <p>The past year's figure a year times the years left, which run to the end of the calendar year
 * in which Stop age is reached. The interval is Student's 95 % for the mean of whole weeks, taken
 * as independent; where minutes change with the mix, the comparison's own interval adds to it.
 */
public final class StopAge {

  /** Fewer whole weeks than this give no interval. */
  static final int FEWEST_WEEKS = 4;

  private static final double WEEKS_OF_A_YEAR = 365.0 / 7;

  private final PastYear past;
  private final double years;
  private final Ratings ratings;
  private final double setUpMinutes;
  private final Optional<ShapeDifference> hotLessCold;

  /** What is still to come until the last year of work, counted in. */
  public StopAge(
      PastYear past,
      int lastYear,
      Ratings ratings,
      double setUpMinutes,
      Optional<ShapeDifference> hotLessCold) {
    this.past = past;
    this.years = Math.max(0, yearsLeft(past.to(), lastYear));
    this.ratings = ratings;
    this.setUpMinutes = setUpMinutes;
    this.hotLessCold = hotLessCold;
  }

  private static double yearsLeft(LocalDate asAt, int lastYear) {
    double restOfThis = (double) (asAt.lengthOfYear() - asAt.getDayOfYear()) / asAt.lengthOfYear();
    return lastYear - asAt.getYear() + restOfThis;
  }

  /**
   * The years left.
   *
   * @return 0 when the age is reached already
   */
  public double years() {
    return years;
  }

  /**
   * Blows still to come under a mix.
   *
   * @param mix which
   * @return empty where no task has its blows counted
   */
  public Optional<Estimate> blows(Mix mix) {
    if (!ratings.ratesBlows()) {
      return Optional.empty();
    }
    return Optional.of(overYears(load -> under(load).blows(mix, ratings).orElse(0)));
  }

  /**
   * Hours at the stall jack still to come under a mix.
   *
   * @param mix which
   * @return empty where the mix needs the comparison of hot with cold and there is none
   */
  public Optional<Estimate> stallJackHours(Mix mix) {
    return under(past.load())
        .stallJackMinutes(mix)
        .map(
            whole -> {
              Estimate weeks = overYears(load -> stallJackHoursOf(load, mix));
              Estimate difference = whole.map(minutes -> minutes / 60 * past.scale() * years);
              return difference.plus(weeks.map(hours -> hours - weeks.value()));
            });
  }

  private double stallJackHoursOf(Load load, Mix mix) {
    return under(load).stallJackMinutes(mix).map(Estimate::value).orElse(0.0) / 60;
  }

  private MixedWork under(Load load) {
    return new MixedWork(load, setUpMinutes, hotLessCold);
  }

  private Estimate overYears(ToDoubleFunction<Load> figure) {
    double value = figure.applyAsDouble(past.load()) * past.scale() * years;
    return new Estimate(value, reachOfWeeks(figure).map(reach -> Interval.around(value, reach)));
  }

  private Optional<Double> reachOfWeeks(ToDoubleFunction<Load> figure) {
    List<Double> weeks = new ArrayList<>();
    past.weeks().forEach(week -> weeks.add(figure.applyAsDouble(week)));
    if (weeks.size() < FEWEST_WEEKS) {
      return Optional.empty();
    }
    Moments moments = Moments.of(weeks.stream().mapToDouble(Double::doubleValue).toArray());
    double error = Math.sqrt(moments.variance() / moments.n());
    return Optional.of(StudentT.quantile(moments.n() - 1) * error * WEEKS_OF_A_YEAR * years);
  }
}

package clenchbook.comparison.questions;

import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is compared. */
public enum Measure {
  /** Own Shape min over the shoes nailed on. */
  SHAPE_MINUTES_PER_SHOE(
      "shape minutes per shoe",
      Unit.MINUTES,
      "comparison.measure.shape",
      "comparison.measure.shape.heading") {
    @Override
    Optional<Exclusion> missing(ComparedJob job) {
      return job.time().ownShape().isEmpty()
          ? Optional.of(Exclusion.SHAPE_NOT_MEASURED)
          : possible(job.time().ownShape().get());
    }

    @Override
    double of(ComparedJob job, CompareRates rates) {
      return job.time().ownShape().map(BigDecimal::doubleValue).orElse(0.0) / job.shoes();
    }
  },

  /** From first foot to last clench, with the share of setting up the forge. */
  JOB_MINUTES(
      "job minutes", Unit.MINUTES, "comparison.measure.job", "comparison.measure.job.heading") {
    @Override
    double of(ComparedJob job, CompareRates rates) {
      return job.time().job().doubleValue();
    }
  },

  /** Materials, gas, sundries and the wages of job, making and helper; no travel, no overheads. */
  COST_PER_JOB(
      "cost per job", Unit.MONEY, "comparison.measure.cost", "comparison.measure.cost.heading") {
    @Override
    double of(ComparedJob job, CompareRates rates) {
      JobMoney money = job.money();
      return money
          .materials()
          .add(money.gas())
          .add(money.sundries())
          .add(rates.labourOnTheSpot(job.time()))
          .doubleValue();
    }
  },

  /** What is left before labour, over the hours of job, drive and making. */
  EARNED_PER_HOUR(
      "earned per hour",
      Unit.MONEY,
      "comparison.measure.earned",
      "comparison.measure.earned.heading") {
    @Override
    double of(ComparedJob job, CompareRates rates) {
      return job.money()
          .marginBeforeLabour()
          .multiply(CompareRates.MINUTES_PER_HOUR)
          .divide(job.time().all(), MathContext.DECIMAL64)
          .doubleValue();
    }

    @Override
    Optional<Exclusion> missing(ComparedJob job) {
      return job.time().all().signum() == 0
          ? Optional.of(Exclusion.NOT_MEASURED)
          : super.missing(job);
    }
  };

  /** What the numbers are. */
  public enum Unit {
    /** Minutes. */
    MINUTES,
    /** The book's currency. */
    MONEY
  }

  private final String title;
  private final Unit unit;
  private final String key;
  private final String headingKey;

  Measure(String title, Unit unit, String key, String headingKey) {
    this.title = title;
    this.unit = unit;
    this.key = key;
    this.headingKey = headingKey;
  }

  /** Why a job that enters the question has no value here; empty where it has one. */
  Optional<Exclusion> missing(ComparedJob job) {
    return job.time().measured() ? possible(job.time().job()) : Optional.of(Exclusion.NOT_MEASURED);
  }

  private static Optional<Exclusion> possible(BigDecimal minutes) {
    return minutes.compareTo(JobTime.A_DAY) > 0
        ? Optional.of(Exclusion.IMPOSSIBLE_MINUTES)
        : Optional.empty();
  }

  abstract double of(ComparedJob job, CompareRates rates);

  /** The value of a job; empty where it has none. */
  public OptionalDouble value(ComparedJob job, CompareRates rates) {
    return missing(job).isPresent() ? OptionalDouble.empty() : OptionalDouble.of(of(job, rates));
  }

  /** The measure's name in files. */
  public String title() {
    return title;
  }

  /** The measure's name for people. */
  public Message told() {
    return Message.of(key);
  }

  /** The measure's name as a heading. */
  public Message heading() {
    return Message.of(headingKey);
  }

  /** What its numbers are. */
  public Unit unit() {
    return unit;
  }
}

package clenchbook.costing;

import clenchbook.jobs.Job;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * What a job cost and what it left. Amounts are in the currency, each rounded half up to the minor
 * unit; minutes are exact to 34 figures. A cancelled job has zero everywhere.
 *
 * @param job the job
 * @param chargeNet what it brought after discount, without tax
 * @param materials new shoes, nails and extras
 * @param gas its own burning and its share of heating the forge
 * @param sundries rasps, knives and the like, once a horse-visit
 * @param travel its share of the day's driving
 * @param overhead its time's share of the year's overheads
 * @param labour its time at the wage, and the helper's
 * @param setupMinutes its share of setting the forge up
 * @param driveMinutes its share of the day's drive
 * @param materialsBasis measured where every item was bought, standard where a list cost was used,
 *     default where a cost was missing
 * @param timeBasis measured where the job's minutes were, standard or default else
 * @param travelBasis measured from Trips, standard from Places, default for want of both
 */
public record JobCost(
    Job job,
    BigDecimal chargeNet,
    BigDecimal materials,
    BigDecimal gas,
    BigDecimal sundries,
    BigDecimal travel,
    BigDecimal overhead,
    BigDecimal labour,
    BigDecimal setupMinutes,
    BigDecimal driveMinutes,
    Basis materialsBasis,
    Basis timeBasis,
    Basis travelBasis) {
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  /**
   * Work on the horse with its share of setting the forge up.
   *
   * @return minutes; zero for a cancelled job
   */
  public BigDecimal jobMinutes() {
    return job.cancelled() ? BigDecimal.ZERO : job.minutes().work().add(setupMinutes);
  }

  /**
   * All the farrier's own time: job, drive and making.
   *
   * @return minutes; zero for a cancelled job
   */
  public BigDecimal ownMinutes() {
    return job.cancelled()
        ? BigDecimal.ZERO
        : jobMinutes().add(driveMinutes).add(job.minutes().making());
  }

  /**
   * What is left before the farrier's own labour.
   *
   * @return charge less materials, gas, sundries, travel and overhead
   */
  public BigDecimal marginBeforeLabour() {
    return chargeNet
        .subtract(materials)
        .subtract(gas)
        .subtract(sundries)
        .subtract(travel)
        .subtract(overhead);
  }

  /**
   * What is left after labour.
   *
   * @return the margin before labour less labour
   */
  public BigDecimal marginAfterLabour() {
    return marginBeforeLabour().subtract(labour);
  }

  /**
   * What an hour of the farrier's time earned.
   *
   * @return margin before labour per hour of own time, at the margin's scale; empty without time
   */
  public Optional<BigDecimal> earnedPerHour() {
    BigDecimal minutes = ownMinutes();
    if (minutes.signum() == 0) {
      return Optional.empty();
    }
    return Optional.of(
        marginBeforeLabour()
            .multiply(SIXTY)
            .divide(minutes, MathContext.DECIMAL128)
            .setScale(chargeNet.scale(), RoundingMode.HALF_UP));
  }
}

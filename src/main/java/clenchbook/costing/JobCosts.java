package clenchbook.costing;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.jobs.Job;
import clenchbook.jobs.JobMinutes;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.Measured;
import clenchbook.jobs.charge.JobCharges;
import clenchbook.stock.ledger.StockLedger;
import clenchbook.values.Basis;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * Costs every job of a book. All jobs are costed, whatever the month, because materials are priced
 * by a moving average that runs through the book.
 *
 * @param all one cost per job, in the order of the jobs
 * @param overheads the overheads that the jobs bear
 */
public record JobCosts(List<JobCost> all, Overheads overheads) {
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  /** Copies its list. */
  public JobCosts {
    all = List.copyOf(all);
  }

  /**
   * Costs a book's jobs.
   *
   * @param jobs the jobs
   * @param last the last day of the run's period, for the overheads
   * @return their costs
   */
  public static JobCosts of(Jobs jobs, LocalDate last) {
    Overheads overheads = Overheads.of(jobs, last);
    Pass pass = new Pass(jobs, overheads);
    return new JobCosts(jobs.all().stream().map(pass::cost).toList(), overheads);
  }

  /**
   * The costs of a period.
   *
   * @param first first day, inclusive
   * @param last last day, inclusive
   * @return in order
   */
  public List<JobCost> between(LocalDate first, LocalDate last) {
    return all.stream()
        .filter(cost -> !cost.job().date().isBefore(first) && !cost.job().date().isAfter(last))
        .toList();
  }

  private static final class Pass {
    private final Settings settings;
    private final MinorUnit unit;
    private final JobCharges charges;
    private final Overheads overheads;
    private final Map<Job, MaterialCosts.Cost> materials;
    private final Map<Job, TravelCosts.Share> travel;
    private final Map<Job, ForgeCosts.Share> forge;
    private final BigDecimal wagePerMinute;
    private final BigDecimal helperPerMinute;

    Pass(Jobs jobs, Overheads overheads) {
      settings = jobs.index().book().settings();
      unit = settings.minorUnit();
      charges = new JobCharges(jobs.index());
      this.overheads = overheads;
      Map<LocalDate, List<Stop>> days = Stops.byDay(jobs.all());
      materials = MaterialCosts.of(jobs.index(), jobs.all());
      travel = TravelCosts.of(jobs.index(), days);
      forge = ForgeCosts.of(settings, days);
      wagePerMinute = perMinute(Setting.HOURLY_WAGE);
      helperPerMinute = perMinute(Setting.HELPER_WAGE);
    }

    private BigDecimal perMinute(Setting wage) {
      return settings.number(wage).divide(SIXTY, MathContext.DECIMAL128);
    }

    JobCost cost(Job job) {
      if (job.cancelled()) {
        return nothing(job);
      }
      MaterialCosts.Cost material = materials.getOrDefault(job, MaterialCosts.Cost.NOTHING);
      TravelCosts.Share way =
          travel.getOrDefault(
              job, new TravelCosts.Share(unit.zero(), BigDecimal.ZERO, Basis.DEFAULT));
      ForgeCosts.Share fire =
          forge.getOrDefault(job, new ForgeCosts.Share(unit.zero(), BigDecimal.ZERO));
      JobMinutes minutes = job.minutes();
      BigDecimal own =
          minutes.work().add(fire.setupMinutes()).add(way.minutes()).add(minutes.making());
      return new JobCost(
          job,
          charges.net(charges.lines(job)),
          unit.round(StockLedger.settled(material.exact())),
          fire.gas(),
          sundries(job),
          way.cost(),
          unit.round(own.multiply(overheads.perMinute())),
          labour(own, minutes.helper()),
          fire.setupMinutes(),
          way.minutes(),
          material.basis(),
          timeBasis(job),
          way.basis());
    }

    private BigDecimal sundries(Job job) {
      return job.firstOfVisit() ? unit.round(settings.number(Setting.SUNDRIES)) : unit.zero();
    }

    private BigDecimal labour(BigDecimal own, BigDecimal helper) {
      return unit.round(own.multiply(wagePerMinute).add(helper.multiply(helperPerMinute)));
    }

    private static Basis timeBasis(Job job) {
      if (job.minutes().measured() == Measured.YES) {
        return Basis.MEASURED;
      }
      return job.minutes().work().signum() > 0 ? Basis.STANDARD : Basis.DEFAULT;
    }

    private JobCost nothing(Job job) {
      BigDecimal zero = unit.zero();
      return new JobCost(
          job,
          zero,
          zero,
          zero,
          zero,
          zero,
          zero,
          zero,
          BigDecimal.ZERO,
          BigDecimal.ZERO,
          Basis.MEASURED,
          Basis.MEASURED,
          Basis.MEASURED);
    }
  }
}

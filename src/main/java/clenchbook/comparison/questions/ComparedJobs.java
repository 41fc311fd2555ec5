package clenchbook.comparison.questions;

import clenchbook.book.Names;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.WorkItem;
import clenchbook.costing.JobCost;
import clenchbook.costing.JobCosts;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.Measured;
import clenchbook.jobs.Payer;
import clenchbook.jobs.charge.ChargeLine;
import clenchbook.jobs.charge.JobCharges;
import clenchbook.reports.blocks.FigureText;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Turns a book's costed jobs into what the comparisons need of them. */
public final class ComparedJobs {

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private final JobCharges charges;
  private final Settings settings;

  private ComparedJobs(Jobs jobs) {
    this.charges = new JobCharges(jobs.index());
    this.settings = jobs.index().book().settings();
  }

  /**
   * All jobs of the book, whatever the period: earlier ones put on the shoes that later ones find
   * lost.
   *
   * @param jobs the book's jobs
   * @param costs their costs
   * @return in {@link ComparedJob#ORDER}
   */
  public static List<ComparedJob> of(Jobs jobs, JobCosts costs) {
    ComparedJobs maker = new ComparedJobs(jobs);
    return costs.all().stream().map(maker::job).sorted(ComparedJob.ORDER).toList();
  }

  private ComparedJob job(JobCost cost) {
    Job job = cost.job();
    return new ComparedJob(
        job.visit().source(),
        job.date(),
        Names.key(job.horse().name()) + " / " + Names.key(job.horse().owner()),
        job.horse().name(),
        job.date() + " / " + Names.key(job.place()),
        job.payers().stream().findFirst().map(Payer::name).orElse(job.horse().owner()),
        job.workName(),
        job.work().map(WorkItem::compareAs).orElse(""),
        job.fee(),
        job.visit().reason(),
        job.shaping(),
        job.parts().stream().map(part -> new ShoeCount(part.kind(), part.count())).toList(),
        job.shoes(),
        job.newShoes(),
        job.visit().lost().map(OptionalInt::of).orElse(OptionalInt.empty()),
        time(cost),
        money(cost));
  }

  private static JobTime time(JobCost cost) {
    Job job = cost.job();
    return new JobTime(
        job.minutes().shape().basis() == Basis.MEASURED
            ? Optional.of(job.minutes().shape().minutes())
            : Optional.empty(),
        job.minutes().measured() == Measured.YES,
        cost.jobMinutes(),
        cost.driveMinutes(),
        job.minutes().making(),
        job.minutes().helper(),
        job.minutes().forge().minutes());
  }

  private JobMoney money(JobCost cost) {
    List<ChargeLine> lines = charges.lines(cost.job());
    return new JobMoney(
        cost.chargeNet(),
        list(cost.job(), lines, extras(cost.job())),
        list(cost.job(), lines, BigDecimal.ZERO),
        cost.materials(),
        cost.gas(),
        cost.sundries(),
        cost.travel(),
        cost.overhead(),
        cost.labour());
  }

  /** What the list asks, without the tax that it may include, rounded to the minor unit. */
  private Optional<BigDecimal> list(Job job, List<ChargeLine> lines, BigDecimal extras) {
    return job.listPrice()
        .filter(price -> !lines.isEmpty())
        .map(price -> settings.minorUnit().round(price.add(extras).multiply(netShare(lines))));
  }

  private static BigDecimal extras(Job job) {
    return job.extras().stream()
        .map(
            extra ->
                extra
                    .material()
                    .flatMap(row -> row.price())
                    .orElse(BigDecimal.ZERO)
                    .multiply(BigDecimal.valueOf(extra.count())))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** How much of a charge is not tax: 1 where prices are without. */
  private static BigDecimal netShare(List<ChargeLine> lines) {
    BigDecimal gross =
        lines.stream().map(ChargeLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal net =
        lines.stream().map(ChargeLine::exactNet).reduce(BigDecimal.ZERO, BigDecimal::add);
    boolean without = gross.signum() == 0 || gross.compareTo(net) == 0;
    return without ? BigDecimal.ONE : net.divide(gross, MathContext.DECIMAL128);
  }

  /** The rates that the settings give. */
  public static CompareRates rates(Settings settings) {
    BigDecimal perMinute =
        settings
            .gasBurnKgPerHour()
            .multiply(settings.gasCostPerKg())
            .divide(CompareRates.MINUTES_PER_HOUR, MathContext.DECIMAL128);
    return new CompareRates(
        settings.currency(),
        FigureText.of(settings),
        settings.minorUnit(),
        given(settings, Setting.HOURLY_WAGE),
        given(settings, Setting.HELPER_WAGE),
        settings.gasCostGiven() ? Optional.of(perMinute) : Optional.empty(),
        settings.number(Setting.FORGE_SETUP_MIN),
        settings.number(Setting.FORGE_SETUP_GAS_MIN),
        settings.isGiven(Setting.FORGE_SETUP_MIN) && settings.isGiven(Setting.FORGE_SETUP_GAS_MIN),
        settings.whole(Setting.CALLBACK_DAYS),
        given(settings, Setting.TARGET_MARGIN)
            .map(percent -> percent.divide(HUNDRED, MathContext.DECIMAL128))
            .filter(part -> part.compareTo(BigDecimal.ONE) < 0));
  }

  private static Optional<BigDecimal> given(Settings settings, Setting setting) {
    return settings.isGiven(setting) ? settings.findNumber(setting) : Optional.empty();
  }
}

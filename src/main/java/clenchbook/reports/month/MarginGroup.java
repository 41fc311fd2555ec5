package clenchbook.reports.month;

import clenchbook.costing.JobCost;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Jobs added up: what they brought, what each cost came to, what was left.
 *
 * @param name what they have in common
 * @param jobs the jobs' costs, uncancelled ones only, at least one
 */
public record MarginGroup(String name, List<JobCost> jobs) {
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  /** Copies its list. */
  public MarginGroup {
    jobs = List.copyOf(jobs);
  }

  BigDecimal sum(Function<JobCost, BigDecimal> figure) {
    return jobs.stream().map(figure).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  BigDecimal income() {
    return sum(JobCost::chargeNet);
  }

  BigDecimal marginBefore() {
    return sum(JobCost::marginBeforeLabour);
  }

  BigDecimal marginAfter() {
    return sum(JobCost::marginAfterLabour);
  }

  boolean fellShort() {
    return marginAfter().signum() < 0;
  }

  BigDecimal minutes() {
    return sum(JobCost::ownMinutes);
  }

  Optional<BigDecimal> earnedPerHour() {
    BigDecimal minutes = minutes();
    return minutes.signum() == 0
        ? Optional.empty()
        : Optional.of(
            marginBefore()
                .multiply(SIXTY)
                .divide(minutes, MathContext.DECIMAL128)
                .setScale(marginBefore().scale(), RoundingMode.HALF_UP));
  }

  /** What the average job would have to bring, without tax, for its labour to be covered. */
  BigDecimal neededNet() {
    return income()
        .subtract(marginAfter())
        .divide(BigDecimal.valueOf(jobs.size()), income().scale(), RoundingMode.HALF_UP);
  }

  BigDecimal averageNet() {
    return income().divide(BigDecimal.valueOf(jobs.size()), income().scale(), RoundingMode.HALF_UP);
  }

  Basis basis(Function<JobCost, Basis> of) {
    return jobs.stream().map(of).reduce(Basis.MEASURED, Basis::weaker);
  }

  Basis timeBasis() {
    return basis(JobCost::timeBasis).weaker(basis(JobCost::travelBasis));
  }
}

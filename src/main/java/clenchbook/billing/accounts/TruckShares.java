package clenchbook.billing.accounts;

import clenchbook.book.Names;
import clenchbook.jobs.Job;
import clenchbook.jobs.Payer;
import clenchbook.values.money.LargestRemainder;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Whose the money taken at the truck is. */
public final class TruckShares {
  private TruckShares() {}

  /**
   * Who handed the money over: the named owner when among the payers, else all by their shares.
   *
   * @param job the job
   * @param unit the minor unit
   * @return amounts by the payer's name, in the order of the payers; empty where nothing was taken
   *     or nobody is billed
   */
  public static Map<String, BigDecimal> of(Job job, MinorUnit unit) {
    BigDecimal paid = job.visit().paid().map(unit::round).orElse(unit.zero());
    if (paid.signum() == 0 || job.payers().isEmpty()) {
      return Map.of();
    }
    boolean named =
        job.payers().stream().anyMatch(payer -> Names.same(payer.name(), job.visit().owner()));
    if (named) {
      return Map.of(job.visit().owner(), paid);
    }
    List<BigDecimal> shares =
        LargestRemainder.split(paid, job.payers().stream().map(Payer::sharePercent).toList(), unit);
    Map<String, BigDecimal> byPayer = new LinkedHashMap<>();
    for (int payer = 0; payer < shares.size(); payer++) {
      byPayer.put(job.payers().get(payer).name(), shares.get(payer));
    }
    return byPayer;
  }
}

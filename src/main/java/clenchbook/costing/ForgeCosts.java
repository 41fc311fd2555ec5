package clenchbook.costing;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.jobs.Job;
import clenchbook.values.money.LargestRemainder;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Gas, and the setting-up of the forge that the hot jobs of a stop share equally. */
final class ForgeCosts {
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  private final MinorUnit unit;
  private final BigDecimal costPerMinute;
  private final BigDecimal setupMinutes;
  private final BigDecimal setupGas;
  private final Map<Job, Share> shares = new IdentityHashMap<>();

  /** A job's gas in all, and its share of the setting-up minutes. */
  record Share(BigDecimal gas, BigDecimal setupMinutes) {}

  private ForgeCosts(Settings settings) {
    unit = settings.minorUnit();
    costPerMinute = costPerMinute(settings);
    setupMinutes = settings.number(Setting.FORGE_SETUP_MIN);
    setupGas = unit.round(settings.number(Setting.FORGE_SETUP_GAS_MIN).multiply(costPerMinute));
  }

  /** What a minute of burning costs, to 34 figures. */
  static BigDecimal costPerMinute(Settings settings) {
    return settings
        .gasBurnKgPerHour()
        .multiply(settings.gasCostPerKg())
        .divide(SIXTY, MathContext.DECIMAL128);
  }

  static Map<Job, Share> of(Settings settings, Map<LocalDate, List<Stop>> days) {
    ForgeCosts costs = new ForgeCosts(settings);
    days.values().forEach(stops -> stops.forEach(costs::stop));
    return costs.shares;
  }

  private void stop(Stop stop) {
    List<Job> hot = stop.jobs().stream().filter(Job::hot).toList();
    stop.jobs().forEach(job -> shares.put(job, new Share(burning(job), BigDecimal.ZERO)));
    if (hot.isEmpty()) {
      return;
    }
    List<BigDecimal> gas = LargestRemainder.splitEqually(setupGas, hot.size(), unit);
    BigDecimal minutes =
        setupMinutes.divide(BigDecimal.valueOf(hot.size()), MathContext.DECIMAL128);
    for (int index = 0; index < hot.size(); index++) {
      Job job = hot.get(index);
      shares.put(job, new Share(burning(job).add(gas.get(index)), minutes));
    }
  }

  private BigDecimal burning(Job job) {
    return unit.round(
        job.minutes().forge().minutes().add(job.minutes().makingForge()).multiply(costPerMinute));
  }
}

package clenchbook.tax.billed;

import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.charge.JobCharges;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What the book charges for each of its visits today, without tax, whatever was invoiced. */
public final class BookNets {
  private final TreeMap<String, BigDecimal> nets = new TreeMap<>();
  private final TreeMap<String, LocalDate> days = new TreeMap<>();

  /** What the book charges today for each visit that was not cancelled, without tax. */
  public static BookNets of(Jobs jobs) {
    BookNets nets = new BookNets();
    JobCharges charges = new JobCharges(jobs.index());
    jobs.all().stream().filter(job -> !job.cancelled()).forEach(job -> nets.add(job, charges));
    return nets;
  }

  private void add(Job job, JobCharges charges) {
    String key = key(job.visit().source().sheet(), job.visit().source().row());
    nets.put(key, charges.net(charges.lines(job)));
    days.put(key, job.date());
  }

  public static String key(String sheet, int row) {
    return sheet + "\n" + row;
  }

  public Optional<BigDecimal> net(String sheet, int row) {
    return Optional.ofNullable(nets.get(key(sheet, row)));
  }

  /** The visits of the period together. */
  public BigDecimal within(Period period) {
    return nets.entrySet().stream()
        .filter(entry -> period.holds(days.getOrDefault(entry.getKey(), LocalDate.MIN)))
        .map(Map.Entry::getValue)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}

package clenchbook.reports.month;

import clenchbook.book.Names;
import clenchbook.jobs.Job;
import clenchbook.jobs.Payer;
import clenchbook.reports.letters.NextVisit;
import clenchbook.schedule.due.DueHorse;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** When the horses on an owner's invoice are next due. */
public final class NextVisits implements Function<String, List<NextVisit>> {
  private final Map<String, List<NextVisit>> byOwner = new HashMap<>();

  /**
   * Gathers the dates.
   *
   * @param month the month
   */
  public NextVisits(BilledMonth month) {
    Map<String, List<DueHorse>> due = new HashMap<>();
    for (DueHorse horse : month.due().dates().horses()) {
      due.computeIfAbsent(Names.key(horse.id().name()), unused -> new ArrayList<>()).add(horse);
    }
    month.monthJobs().forEach(job -> add(job, due));
    byOwner
        .values()
        .forEach(
            visits ->
                visits.sort(
                    Comparator.comparing(NextVisit::due)
                        .thenComparing(NextVisit::horse, Names.ORDER)));
  }

  private void add(Job job, Map<String, List<DueHorse>> due) {
    for (DueHorse horse : due.getOrDefault(Names.key(job.horse().name()), List.of())) {
      boolean same = Names.same(horse.id().owner(), job.horse().owner());
      if (same && horse.due().isAfter(month(job))) {
        job.payers().forEach(payer -> add(payer, new NextVisit(horse.id().name(), horse.due())));
      }
    }
  }

  private static LocalDate month(Job job) {
    return YearMonth.from(job.date()).atEndOfMonth();
  }

  private void add(Payer payer, NextVisit visit) {
    List<NextVisit> visits =
        byOwner.computeIfAbsent(Names.key(payer.name()), unused -> new ArrayList<>());
    if (!visits.contains(visit)) {
      visits.add(visit);
    }
  }

  @Override
  public List<NextVisit> apply(String owner) {
    return byOwner.getOrDefault(Names.key(owner), List.of());
  }
}

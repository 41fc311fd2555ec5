package clenchbook.schedule.due;

import clenchbook.jobs.Job;
import clenchbook.jobs.Measured;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What a horse usually has done, and how long it takes.
 *
 * <p>Usual is the Work (or Works of one day together) most frequent among its last six visits; of
 * two equally frequent, the later one. Its shoes are those of the last such visit.
 *
 * @param rows the rows of the last visit with the usual Work
 * @param workMinutes median minutes of work of the visits with it, to a tenth, half-up
 * @param basis measured where all those visits were, else standard; default where no minutes are
 *     known
 */
public record UsualVisit(List<Job> rows, BigDecimal workMinutes, Basis basis) {

  private static final int VISITS_LOOKED_AT = 6;

  /** Copies the rows. */
  public UsualVisit {
    rows = List.copyOf(rows);
  }

  /** Finds the usual visit of a horse. */
  public static UsualVisit of(DueHorse horse) {
    List<List<Job>> all = horse.visits();
    List<List<Job>> recent = all.subList(Math.max(0, all.size() - VISITS_LOOKED_AT), all.size());
    Map<Set<String>, Long> tally =
        recent.stream().collect(Collectors.groupingBy(UsualVisit::works, Collectors.counting()));
    List<Job> usual = recent.get(0);
    for (List<Job> visit : recent) {
      if (often(tally, visit) >= often(tally, usual)) {
        usual = visit;
      }
    }
    Set<String> works = works(usual);
    List<List<Job>> alike = recent.stream().filter(visit -> works(visit).equals(works)).toList();
    BigDecimal minutes = median(alike);
    return new UsualVisit(usual, minutes, minutes.signum() == 0 ? Basis.DEFAULT : basis(alike));
  }

  private static long often(Map<Set<String>, Long> tally, List<Job> visit) {
    return tally.getOrDefault(works(visit), 0L);
  }

  /** Gives the names of its Works, each once. */
  public String workNames() {
    return String.join("; ", works(rows));
  }

  private static Set<String> works(List<Job> visit) {
    return visit.stream().map(Job::workName).collect(Collectors.toCollection(TreeSet::new));
  }

  private static Basis basis(List<List<Job>> visits) {
    boolean measured =
        visits.stream()
            .flatMap(List::stream)
            .allMatch(job -> job.minutes().measured() == Measured.YES);
    return measured ? Basis.MEASURED : Basis.STANDARD;
  }

  private static BigDecimal median(List<List<Job>> visits) {
    List<BigDecimal> minutes = visits.stream().map(UsualVisit::minutes).sorted().toList();
    BigDecimal low = minutes.get((minutes.size() - 1) / 2);
    BigDecimal high = minutes.get(minutes.size() / 2);
    return low.add(high).divide(BigDecimal.valueOf(2), 1, RoundingMode.HALF_UP);
  }

  private static BigDecimal minutes(List<Job> visit) {
    return visit.stream().map(job -> job.minutes().work()).reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}

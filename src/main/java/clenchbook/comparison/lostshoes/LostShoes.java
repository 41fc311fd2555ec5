package clenchbook.comparison.lostshoes;

import clenchbook.book.MaterialKind;
import clenchbook.book.Reason;
import clenchbook.book.Shaping;
import clenchbook.comparison.questions.ComparedJob;
import clenchbook.comparison.questions.ShoeCount;
import clenchbook.comparison.questions.Verdict;
import clenchbook.statistics.Interval;
import clenchbook.statistics.LeaveOneGroupOut;
import clenchbook.statistics.Proportion;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Of the shoes on a horse after a visit, the share found lost at its next visit, by the method that
 * put each on. Aluminium never counts; a loss belongs to the period that finds it.
 *
 * @param hot shoes on and lost, put on hot
 * @param cold the same, put on cold
 * @param horsesHot how many horses wore shoes put on hot
 * @param horsesCold the same, put on cold
 * @param leaveOneOut the difference's interval by leaving out one horse at a time; empty where it
 *     can't be made
 */
public record LostShoes(
    Tally hot, Tally cold, int horsesHot, int horsesCold, Optional<Interval> leaveOneOut) {

  /**
   * Shoes of one method.
   *
   * @param on how many were on after a visit that a later one followed
   * @param lost how many of them were found lost; a part where a loss is split between methods
   */
  public record Tally(double on, double lost) {
    static final Tally NONE = new Tally(0, 0);

    private static final double ROUNDING = 1e-9;

    Tally plus(Tally other) {
      return new Tally(on + other.on, lost + other.lost);
    }

    /** Without another's; what rounding leaves of nothing is nothing. */
    Tally less(Tally other) {
      double rest = on - other.on;
      return rest < ROUNDING ? NONE : new Tally(rest, Math.max(0, lost - other.lost));
    }

    /** The share lost; empty where none was on. */
    public Optional<Proportion> share() {
      return on > 0 ? Optional.of(new Proportion(Math.min(lost, on), on)) : Optional.empty();
    }
  }

  /** Shoes on a horse, by what put them on; {@code other} holds aluminium and the unshaped. */
  private record Worn(double hot, double cold, double other) {
    static final Worn NONE = new Worn(0, 0, 0);

    double all() {
      return hot + cold + other;
    }

    Worn scaled(double factor) {
      return new Worn(hot * factor, cold * factor, other * factor);
    }

    Worn plus(Worn more) {
      return new Worn(hot + more.hot, cold + more.cold, other + more.other);
    }
  }

  private record Pair(Tally hot, Tally cold) {
    static final Pair NONE = new Pair(Tally.NONE, Tally.NONE);

    Pair plus(Pair other) {
      return new Pair(hot.plus(other.hot), cold.plus(other.cold));
    }

    double difference() {
      return hot.on() > 0 && cold.on() > 0
          ? hot.lost() / hot.on() - cold.lost() / cold.on()
          : Double.NaN;
    }
  }

  /**
   * Counts the losses found from {@code from} to {@code to}, both inclusive.
   *
   * @param jobs all of the book's jobs, earlier ones included, since they put the shoes on
   */
  public static LostShoes of(List<ComparedJob> jobs, LocalDate from, LocalDate to) {
    Map<String, Pair> byHorse = new TreeMap<>();
    Map<String, TreeMap<LocalDate, List<ComparedJob>>> visits = new TreeMap<>();
    for (ComparedJob job : jobs) {
      if (job.done() && !job.date().isAfter(to)) {
        visits
            .computeIfAbsent(job.horse(), horse -> new TreeMap<>())
            .computeIfAbsent(job.date(), day -> new ArrayList<>())
            .add(job);
      }
    }
    visits.forEach((horse, days) -> byHorse.put(horse, follow(days, from)));
    byHorse.values().removeIf(pair -> pair.hot().on() == 0 && pair.cold().on() == 0);
    Pair all = byHorse.values().stream().reduce(Pair.NONE, Pair::plus);
    return new LostShoes(
        all.hot(),
        all.cold(),
        (int) byHorse.values().stream().filter(pair -> pair.hot().on() > 0).count(),
        (int) byHorse.values().stream().filter(pair -> pair.cold().on() > 0).count(),
        leaveOneOut(all, byHorse.values()));
  }

  private static Pair follow(TreeMap<LocalDate, List<ComparedJob>> days, LocalDate from) {
    Pair found = Pair.NONE;
    Worn worn = Worn.NONE;
    for (Map.Entry<LocalDate, List<ComparedJob>> day : days.entrySet()) {
      double share = worn.all() > 0 ? Math.min(1, lost(day.getValue()) / worn.all()) : 0;
      if (!day.getKey().isBefore(from)) {
        found =
            found.plus(
                new Pair(
                    new Tally(worn.hot(), worn.hot() * share),
                    new Tally(worn.cold(), worn.cold() * share)));
      }
      Worn left = lostShoeCall(day.getValue()) ? worn.scaled(1 - share) : Worn.NONE;
      worn = left.plus(nailed(day.getValue()));
    }
    return found;
  }

  private static boolean lostShoeCall(List<ComparedJob> visit) {
    return visit.stream().anyMatch(job -> job.reason() == Reason.LOST_SHOE);
  }

  /** Shoes found lost; a call for a lost shoe that does not say how many lost what it nailed on. */
  private static double lost(List<ComparedJob> visit) {
    boolean said = visit.stream().anyMatch(job -> job.lost().isPresent());
    if (!said && lostShoeCall(visit)) {
      return visit.stream()
          .filter(job -> job.reason() == Reason.LOST_SHOE)
          .mapToInt(ComparedJob::shoes)
          .sum();
    }
    return visit.stream().mapToInt(job -> job.lost().orElse(0)).sum();
  }

  private static Worn nailed(List<ComparedJob> visit) {
    Worn nailed = Worn.NONE;
    for (ComparedJob job : visit) {
      int aluminium =
          job.parts().stream()
              .filter(part -> part.kind().filter(MaterialKind.ALUMINIUM::equals).isPresent())
              .mapToInt(ShoeCount::count)
              .sum();
      double rest = Math.max(0, job.shoes() - aluminium);
      boolean hot = job.shaped(Shaping.HOT);
      boolean cold = job.shaped(Shaping.COLD);
      double other = Math.min(aluminium, job.shoes()) + (hot || cold ? 0 : rest);
      nailed = nailed.plus(new Worn(hot ? rest : 0, cold ? rest : 0, other));
    }
    return nailed;
  }

  private static Optional<Interval> leaveOneOut(Pair all, Collection<Pair> horses) {
    double[] without =
        horses.stream()
            .mapToDouble(
                own ->
                    new Pair(all.hot().less(own.hot()), all.cold().less(own.cold())).difference())
            .toArray();
    double full = all.difference();
    return Double.isNaN(full) ? Optional.empty() : LeaveOneGroupOut.interval(full, without, 1, 1);
  }

  /** The share lost of those put on hot less that of those put on cold; empty without either. */
  public Optional<Double> difference() {
    double difference = new Pair(hot, cold).difference();
    return Double.isNaN(difference) ? Optional.empty() : Optional.of(difference);
  }

  /** Newcombe's interval of the difference; empty where a method put on none. */
  public Optional<Interval> plain() {
    return hot.share().flatMap(own -> cold.share().map(own::differenceFrom));
  }

  /** The wider of the two intervals. */
  public Optional<Interval> wider() {
    return Interval.wider(plain(), leaveOneOut);
  }

  /** What it shows, by the rule of all comparisons. */
  public Verdict verdict() {
    return Verdict.of(hot.on(), cold.on(), wider());
  }
}

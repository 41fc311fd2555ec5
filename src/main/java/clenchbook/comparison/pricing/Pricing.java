package clenchbook.comparison.pricing;

import clenchbook.book.Names;
import clenchbook.book.Reason;
import clenchbook.book.Shaping;
import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.ComparedJob;
import clenchbook.comparison.questions.JobMoney;
import clenchbook.comparison.questions.JobTime;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What the period says about prices.
 *
 * @param works one for each Work, in order of their names
 * @param underList who is billed under the list, most first
 * @param callbacks the callbacks, in order of their rows
 * @param callbackSums the same by the method and Work that caused them, fee and trim left out
 * @param impossible how many jobs claim more minutes than a day has; their labour is in the sums
 * @param target the target margin that {@code forTarget} uses, 0 to below 1
 * @param targetGiven whether the farrier gave it
 * @param wageGiven whether the farrier gave a wage; without one, time costs nothing here
 */
public record Pricing(
    List<WorkPrice> works,
    List<UnderList> underList,
    List<Callback> callbacks,
    List<CallbackSum> callbackSums,
    int impossible,
    BigDecimal target,
    boolean targetGiven,
    boolean wageGiven) {

  /** The target margin where none is given (common practice, no source). */
  static final BigDecimal DEFAULT_TARGET = new BigDecimal("0.15");

  private static final BigDecimal RISE = new BigDecimal("0.05");

  /** Copies the lists. */
  public Pricing {
    works = List.copyOf(works);
    underList = List.copyOf(underList);
    callbacks = List.copyOf(callbacks);
    callbackSums = List.copyOf(callbackSums);
  }

  /**
   * Works out the period's prices.
   *
   * @param jobs all of the book's jobs, in {@link ComparedJob#ORDER}
   * @param from first day of the period, inclusive
   * @param to last day, inclusive
   */
  public static Pricing of(
      List<ComparedJob> jobs, LocalDate from, LocalDate to, CompareRates rates) {
    List<ComparedJob> period =
        jobs.stream()
            .filter(job -> !job.date().isBefore(from) && !job.date().isAfter(to))
            .filter(job -> job.reason() != Reason.CANCELLED)
            .toList();
    List<Callback> callbacks = Callbacks.find(jobs, from, to, rates.callbackDays());
    BigDecimal target = rates.targetMargin().orElse(DEFAULT_TARGET);
    Map<String, List<ComparedJob>> byWork = grouped(period, ComparedJob::work);
    Map<String, List<Callback>> byCause =
        callbacks.stream().collect(Collectors.groupingBy(each -> Names.key(each.cause().work())));
    Map<WorkPrice.Loss, BigDecimal> bookShares = parts(period, callbacks);
    BigDecimal bookCharged = sum(period, JobMoney::charged);
    List<WorkPrice> works =
        byWork.values().stream()
            .map(
                some ->
                    price(
                        some,
                        byCause.getOrDefault(Names.key(some.get(0).work()), List.of()),
                        new Usual(bookShares, bookCharged),
                        target,
                        rates))
            .toList();
    return new Pricing(
        works,
        underList(period),
        callbacks,
        sums(period, callbacks, rates),
        (int) period.stream().filter(job -> job.time().job().compareTo(JobTime.A_DAY) > 0).count(),
        target,
        rates.targetMargin().isPresent(),
        rates.wage().isPresent());
  }

  /** What all callbacks cost beyond what was charged for them. */
  public BigDecimal callbackNetCost() {
    return callbacks.stream().map(Callback::netCost).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** The book's costs by part, and what it charged: what is usual. */
  private record Usual(Map<WorkPrice.Loss, BigDecimal> parts, BigDecimal charged) {}

  private static Map<String, List<ComparedJob>> grouped(
      List<ComparedJob> jobs, Function<ComparedJob, String> name) {
    Map<String, List<ComparedJob>> grouped = new TreeMap<>();
    for (ComparedJob job : jobs) {
      grouped.computeIfAbsent(Names.key(name.apply(job)), key -> new ArrayList<>()).add(job);
    }
    return grouped;
  }

  private static BigDecimal sum(List<ComparedJob> jobs, Function<JobMoney, BigDecimal> what) {
    return jobs.stream()
        .map(job -> what.apply(job.money()))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static WorkPrice price(
      List<ComparedJob> jobs,
      List<Callback> callbacks,
      Usual usual,
      BigDecimal target,
      CompareRates rates) {
    int digits = rates.minor().digits();
    BigDecimal count = BigDecimal.valueOf(jobs.size());
    BigDecimal charged = sum(jobs, JobMoney::charged);
    BigDecimal cost = sum(jobs, JobMoney::cost);
    BigDecimal keep = BigDecimal.ONE.subtract(target);
    List<ComparedJob> under = jobs.stream().filter(Pricing::underList).toList();
    return new WorkPrice(
        jobs.get(jobs.size() - 1).work(),
        jobs.size(),
        charged,
        jobs.get(jobs.size() - 1).money().workList(),
        cost,
        charged.subtract(cost),
        cost.divide(count, digits, RoundingMode.HALF_UP),
        cost.divide(count.multiply(keep), digits, RoundingMode.HALF_UP),
        rates.minor().round(charged.multiply(RISE)),
        under.size(),
        under.stream().map(Pricing::shortBy).reduce(rates.minor().zero(), BigDecimal::add),
        callbacks.size(),
        callbacks.stream().map(Callback::netCost).reduce(rates.minor().zero(), BigDecimal::add),
        loss(jobs, callbacks, charged, cost, usual));
  }

  private static boolean underList(ComparedJob job) {
    return job.money().charged().signum() > 0 && shortBy(job).signum() > 0;
  }

  private static BigDecimal shortBy(ComparedJob job) {
    BigDecimal charged = job.money().charged();
    return job.money().list().orElse(charged).subtract(charged);
  }

  private static Optional<WorkPrice.Loss> loss(
      List<ComparedJob> jobs,
      List<Callback> callbacks,
      BigDecimal charged,
      BigDecimal cost,
      Usual usual) {
    Map<WorkPrice.Loss, BigDecimal> own = parts(jobs, callbacks);
    BigDecimal all =
        cost.add(own.getOrDefault(WorkPrice.Loss.CALLBACKS, BigDecimal.ZERO).max(BigDecimal.ZERO));
    if (charged.compareTo(all) >= 0) {
      return Optional.empty();
    }
    if (charged.signum() == 0) {
      return Optional.of(WorkPrice.Loss.FREE);
    }
    return own.keySet().stream()
        .max(Comparator.comparing(part -> above(part, own, charged, usual)));
  }

  /** A part's cost above what it would be at the book's share of a charge; times the charge. */
  private static BigDecimal above(
      WorkPrice.Loss part, Map<WorkPrice.Loss, BigDecimal> own, BigDecimal charged, Usual usual) {
    BigDecimal ownPart = own.getOrDefault(part, BigDecimal.ZERO);
    BigDecimal usualPart = usual.parts().getOrDefault(part, BigDecimal.ZERO);
    return ownPart.multiply(usual.charged()).subtract(usualPart.multiply(charged));
  }

  private static Map<WorkPrice.Loss, BigDecimal> parts(
      List<ComparedJob> jobs, List<Callback> callbacks) {
    Map<WorkPrice.Loss, BigDecimal> parts = new EnumMap<>(WorkPrice.Loss.class);
    parts.put(WorkPrice.Loss.TRAVEL, sum(jobs, JobMoney::travel));
    parts.put(WorkPrice.Loss.MINUTES, sum(jobs, money -> money.labour().add(money.overhead())));
    parts.put(
        WorkPrice.Loss.MATERIALS,
        sum(jobs, money -> money.materials().add(money.gas()).add(money.sundries())));
    parts.put(
        WorkPrice.Loss.CALLBACKS,
        callbacks.stream().map(Callback::netCost).reduce(BigDecimal.ZERO, BigDecimal::add));
    return parts;
  }

  private static List<UnderList> underList(List<ComparedJob> period) {
    return grouped(period.stream().filter(Pricing::underList).toList(), ComparedJob::owner)
        .values()
        .stream()
        .map(
            jobs ->
                new UnderList(
                    jobs.get(0).owner(),
                    jobs.size(),
                    jobs.stream().map(Pricing::shortBy).reduce(BigDecimal.ZERO, BigDecimal::add)))
        .sorted(
            Comparator.comparing(UnderList::by)
                .reversed()
                .thenComparing(UnderList::owner, Names.ORDER))
        .toList();
  }

  private static List<CallbackSum> sums(
      List<ComparedJob> period, List<Callback> callbacks, CompareRates rates) {
    Map<String, List<ComparedJob>> causes =
        grouped(
            period.stream().filter(job -> job.done() && job.shoes() > 0).toList(),
            job -> job.work() + " / " + method(job));
    Map<String, List<Callback>> byCause =
        callbacks.stream().collect(Collectors.groupingBy(each -> key(each.cause())));
    callbacks.forEach(
        each -> causes.computeIfAbsent(key(each.cause()), unused -> new ArrayList<>()));
    List<CallbackSum> sums = new ArrayList<>();
    causes.forEach(
        (key, jobs) -> {
          List<Callback> own = byCause.getOrDefault(key, List.of());
          ComparedJob named = jobs.isEmpty() ? own.get(0).cause() : jobs.get(0);
          sums.add(
              new CallbackSum(
                  named.work(),
                  named.shaping(),
                  jobs.size(),
                  own.size(),
                  own.stream().map(Callback::cost).reduce(rates.minor().zero(), BigDecimal::add),
                  own.stream()
                      .map(each -> each.visit().money().charged())
                      .reduce(rates.minor().zero(), BigDecimal::add)));
        });
    return sums;
  }

  private static String key(ComparedJob job) {
    return Names.key(job.work() + " / " + method(job));
  }

  /** How a job's shoes were shaped, in a word as files have it. */
  public static String method(ComparedJob job) {
    return method(job.shaping());
  }

  static String method(Optional<Shaping> shaping) {
    return shaping.map(Shaping::word).orElse("none");
  }
}

package clenchbook.workload;

import clenchbook.book.Task;
import clenchbook.texts.Message;
import clenchbook.workload.hours.FigurePeriod;
import clenchbook.workload.hours.HoursMeasure;
import clenchbook.workload.hours.OwnLimits;
import clenchbook.workload.hours.Phrase;
import clenchbook.workload.hours.WorkDay;
import clenchbook.workload.methods.MethodScore;
import clenchbook.workload.methods.Unit;
import clenchbook.workload.scores.YearScores;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The worst of one measure in the year to date, against its limit or published value.
 *
 * @param measure the measure's name
 * @param task the task that it is about; empty where it is about the whole day
 * @param kind what it is about
 * @param value the worst value
 * @param unit its unit
 * @param limit the limit or published value, in the same unit, above zero
 * @param limitName whose limit it is
 * @param times how many times its limit it reaches; for a level in decibels the times of its sound
 *     energy, which is tenfold every 10 dB (ISO 1999:2013, 3.6, from memory)
 * @param when the day, or the Monday of the week; empty for a year
 */
record Excess(
    Message measure,
    Optional<Task> task,
    Kind kind,
    double value,
    Unit unit,
    double limit,
    Message limitName,
    double times,
    Optional<LocalDate> when) {

  /** What a measure is about, and so what can be done. */
  enum Kind {
    /** Noise at the ear. */
    NOISE,
    /** Hand and wrist. */
    STRAIN,
    /** Vibrating tools. */
    VIBRATION,
    /** A bent back. */
    POSTURE,
    /** Hours and horses by the farrier's own limits. */
    HOURS
  }

  private static final Message OWN = Message.of("workload.excess.own");

  /**
   * Every measure with a limit, the furthest over it first. A level stands before a dose as far
   * over, since people know decibels; else equals keep the order of the methods.
   */
  static List<Excess> of(WorkYear work) {
    List<Excess> all = new ArrayList<>();
    for (YearScores.Summary summary : work.scores().summaries()) {
      score(summary).ifPresent(all::add);
    }
    OwnLimits limits = work.limits();
    limits
        .yearlyHours()
        .ifPresent(
            limit ->
                all.add(
                    own(
                        Message.of("workload.excess.year"),
                        work.projection().hours(),
                        Unit.HOURS,
                        limit,
                        Optional.empty())));
    limits.weeklyHours().ifPresent(limit -> week(work, limit).ifPresent(all::add));
    limits.horsesPerDay().ifPresent(limit -> day(work, limit).ifPresent(all::add));
    all.sort(
        Comparator.comparingDouble((Excess one) -> -Math.rint(one.times()))
            .thenComparing(one -> !one.level())
            .thenComparingDouble(one -> -one.times()));
    return List.copyOf(all);
  }

  private static Optional<Excess> score(YearScores.Summary summary) {
    MethodScore score = summary.worst().score();
    if (score.guidance().isEmpty() || score.guidance().getAsDouble() <= 0) {
      return Optional.empty();
    }
    double value = score.score().number().orElseThrow();
    double limit = score.guidance().getAsDouble();
    boolean level = score.unit() == Unit.DECIBELS;
    return Optional.of(
        new Excess(
            summary.measure().name().said(),
            summary.measure().task(),
            kind(score.subject()),
            value,
            score.unit(),
            limit,
            score.guidanceName().map(Phrase::said).orElse(Message.NONE),
            level ? Math.pow(10, (value - limit) / 10) : value / limit,
            Optional.of(summary.worst().date())));
  }

  private boolean level() {
    return unit == Unit.DECIBELS;
  }

  private static Kind kind(MethodScore.Subject subject) {
    return switch (subject) {
      case NOISE -> Kind.NOISE;
      case STRAIN -> Kind.STRAIN;
      case VIBRATION -> Kind.VIBRATION;
      case POSTURE -> Kind.POSTURE;
    };
  }

  private static Excess own(
      Message measure, double value, Unit unit, double limit, Optional<LocalDate> when) {
    return new Excess(
        measure, Optional.empty(), Kind.HOURS, value, unit, limit, OWN, value / limit, when);
  }

  private static Optional<Excess> week(WorkYear work, double limit) {
    return work.year().weeks().stream()
        .max(Comparator.comparingDouble((FigurePeriod week) -> hours(work, week)))
        .map(
            week ->
                own(
                    Message.of("workload.excess.week"),
                    hours(work, week),
                    Unit.HOURS,
                    limit,
                    Optional.of(week.from())));
  }

  private static double hours(WorkYear work, FigurePeriod week) {
    return work.load(week).hours(HoursMeasure.IN_ALL);
  }

  private static Optional<Excess> day(WorkYear work, double limit) {
    return work.worked().stream()
        .max(
            Comparator.comparingInt((WorkDay day) -> day.load().horses())
                .thenComparing(WorkDay::date, Comparator.reverseOrder()))
        .map(
            day ->
                own(
                    Message.of("workload.excess.day"),
                    day.load().horses(),
                    Unit.NONE,
                    limit,
                    Optional.of(day.date())));
  }

  /** Whether it lies above its limit by more than the last digit printed. */
  boolean over() {
    return OwnLimits.exceeds(value, limit);
  }
}

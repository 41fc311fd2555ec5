package clenchbook.samples;

import clenchbook.samples.Scenario.Kind;
import clenchbook.samples.Stable.Horse;
import clenchbook.samples.Stable.Yard;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/** Plans and works each day: the place that waits longest first, then what lies near it. */
final class Diary {
  private final Scenario scenario;
  private final Stable stable;
  private final Random random;
  private final Job job;
  private final Set<LocalDate> rainedOut = new HashSet<>();
  final List<Visit> visits = new ArrayList<>();

  Diary(Scenario scenario, Stable stable, PriceList work, PriceList materials, Random random) {
    this.scenario = scenario;
    this.stable = stable;
    this.random = random;
    this.job = new Job(scenario, work, materials, random);
    while (rainedOut.size() < 13) {
      LocalDate day = scenario.start().plusDays(random.nextInt(400));
      if (day.getMonthValue() > 9 || day.getMonthValue() < 5) {
        rainedOut.add(day);
      }
    }
  }

  void keep() {
    for (LocalDate day = scenario.start(); !day.isAfter(scenario.end()); day = day.plusDays(1)) {
      if (day.equals(scenario.end().withDayOfMonth(1))) {
        oddOnesDue(day);
      }
      if (atWork(day)) {
        work(day);
      }
    }
  }

  /** Shared horses and horses on loan come due in the last month, so that month shows them. */
  private void oddOnesDue(LocalDate day) {
    stable.horses.stream()
        .filter(horse -> !horse.shares.isEmpty() || horse.billTo != null)
        .forEach(horse -> horse.due = day.plusDays(random.nextInt(14)));
  }

  private boolean atWork(LocalDate day) {
    boolean weekend =
        day.getDayOfWeek() == DayOfWeek.SUNDAY
            || day.getDayOfWeek() == DayOfWeek.SATURDAY && random.nextInt(9) > 0;
    return !weekend
        && scenario.closed().stream().noneMatch(c -> !day.isBefore(c[0]) && !day.isAfter(c[1]));
  }

  private void work(LocalDate day) {
    boolean helped =
        scenario.helperDays()
            && Set.of(DayOfWeek.TUESDAY, DayOfWeek.THURSDAY).contains(day.getDayOfWeek());
    int places = scenario.horsesPerDay() + random.nextInt(3) - 1 + (helped ? 2 : 0);
    List<Horse> today = new ArrayList<>();
    Yard here = seed(day);
    double trims = 0;
    while (here != null && today.size() - trims < places) {
      List<Horse> due = dueAt(here, day, 8);
      due.removeAll(today);
      for (Horse horse : due) {
        if (today.size() - trims < places) {
          today.add(horse);
          trims += horse.usual == Kind.TRIM ? 0.5 : 0;
        }
      }
      here = next(here, today, day);
    }
    boolean longWait = today.stream().anyMatch(h -> ChronoUnit.DAYS.between(h.due, day) > 12);
    if (today.size() < scenario.horsesPerDay() - 2 && !longWait) {
      return;
    }
    record(day, today, helped);
  }

  private void record(LocalDate day, List<Horse> today, boolean helped) {
    if (rainedOut.contains(day)) {
      if (day.getDayOfMonth() % 2 == 0) {
        today.stream()
            .limit(2)
            .forEach(h -> visits.add(job.cancelled(day, h, "yard flooded, rained out")));
      }
      return;
    }
    Yard before = null;
    boolean hotStop = true;
    for (Horse horse : today) {
      if (horse.yard != before) {
        calls(day, horse.yard);
        hotStop = random.nextInt(100) < 50;
        before = horse.yard;
      }
      if (random.nextInt(80) == 0) {
        missed(day, horse);
      } else {
        visits.addAll(job.routine(day, horse, helped, hotStop));
        horse.due =
            day.plusWeeks(horse.interval + winter(day, horse)).plusDays(random.nextInt(3) - 1);
      }
    }
  }

  /**
   * Lost shoes are put back when the farrier is near, with a call-out fee when it was a special
   * trip.
   */
  private void calls(LocalDate day, Yard yard) {
    for (Horse horse : stable.horses) {
      boolean here =
          horse.yard == yard
              && active(horse, day)
              && horse.lost > 0
              && horse.due.isAfter(day.plusDays(6));
      if (here && random.nextInt(10) < 7) {
        visits.add(job.lostShoe(day, horse));
        if (random.nextInt(3) == 0) {
          visits.add(job.fee(day, horse, Kind.CALLOUT, ""));
        }
      }
    }
  }

  private void missed(LocalDate day, Horse horse) {
    if (random.nextInt(3) == 0) {
      visits.add(job.fee(day, horse, Kind.NOSHOW, "nobody at the yard, horse in the far field"));
    } else {
      visits.add(job.cancelled(day, horse, "owner rang at eight, moved to next week"));
    }
    horse.due = day.plusDays(6);
  }

  private Yard seed(LocalDate day) {
    return stable.yards.stream()
        .max(Comparator.comparingDouble(yard -> urgency(yard, day)))
        .filter(yard -> urgency(yard, day) > 0)
        .orElse(null);
  }

  private double urgency(Yard yard, LocalDate day) {
    return dueAt(yard, day, 3).stream()
        .mapToDouble(h -> 4 + Math.pow(Math.max(0, ChronoUnit.DAYS.between(h.due, day)), 1.5))
        .sum();
  }

  private Yard next(Yard here, List<Horse> taken, LocalDate day) {
    return stable.yards.stream()
        .filter(yard -> yard != here && here.milesTo(yard) < 20)
        .filter(yard -> dueAt(yard, day, 6).stream().anyMatch(h -> !taken.contains(h)))
        .min(Comparator.comparingDouble(here::milesTo))
        .orElse(null);
  }

  private List<Horse> dueAt(Yard yard, LocalDate day, int early) {
    List<Horse> due = new ArrayList<>();
    for (Horse horse : stable.horses) {
      if (horse.yard == yard && active(horse, day) && !horse.due.isAfter(day.plusDays(early))) {
        due.add(horse);
      }
    }
    due.sort(Comparator.comparing((Horse h) -> h.due));
    return due;
  }

  private static boolean active(Horse horse, LocalDate day) {
    return !day.isBefore(horse.arrives) && !day.isAfter(horse.leaves);
  }

  private int winter(LocalDate day, Horse horse) {
    boolean cold = Set.of(Month.NOVEMBER, Month.DECEMBER, Month.JANUARY).contains(day.getMonth());
    return cold && horse.interval > 5 ? 1 : 0;
  }
}
